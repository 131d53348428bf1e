package org.moultwright.boot.command;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.moultwright.compute.climate.ClimateSummary;
import org.moultwright.domain.AssumedTimings;
import org.moultwright.domain.BroodRecord;
import org.moultwright.text.DayWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code climate}: what the climate of a brood's containers was. */
@Command(
        name = "climate",
        description = "Says what the climate of a brood folder's containers was, up to its last row.")
final class ClimateCommand implements Runnable {
    @Parameters(paramLabel = "FOLDER", description = "a brood folder")
    Path folder = Path.of("");

    @Option(
            names = "--container",
            paramLabel = "C",
            description = "this container alone (default: every tray, and what a probe was in)")
    Optional<String> container = Optional.empty();

    @Mixin
    OwnTimings own = new OwnTimings();

    @Mixin
    Answer answer = new Answer();

    @Override
    public void run() {
        BroodRecord record = Folders.whole(folder, answer.err());
        AssumedTimings assumed = own.timings(answer.err());
        Instant until = LastRow.of(record);
        container.ifPresent(code -> requireKnown(record, code));
        for (String code : container.map(Set::of).orElseGet(() -> measuredOrLivedIn(record))) {
            tell(record, ClimateSummary.of(record, code, until, assumed));
        }
    }

    private void requireKnown(BroodRecord record, String code) {
        Set<String> known = measuredOrLivedIn(record);
        record.stays().forEach(stay -> known.add(stay.container()));
        record.setPoints().forEach(point -> known.add(point.container()));
        if (!known.contains(code)) {
            throw new Refusal("There is no container '%s' in '%s'. It has: %s."
                    .formatted(code, folder, String.join(", ", known)));
        }
    }

    private static Set<String> measuredOrLivedIn(BroodRecord record) {
        Set<String> codes = new TreeSet<>();
        record.probeStays().forEach(stay -> codes.add(stay.container()));
        record.extremes().forEach(extremes -> codes.add(extremes.container()));
        record.checks().forEach(check -> codes.add(check.tray()));
        record.ledger().balances().keySet().stream()
                .filter(account -> account.isTray())
                .forEach(account -> codes.add(account.code()));
        return codes;
    }

    private void tell(BroodRecord record, ClimateSummary climate) {
        if (answer.json) {
            answer.document(ClimateJson.of(record.brood().code(), climate));
            return;
        }
        DayWords days = new DayWords(record.brood().zone());
        StringBuilder line = new StringBuilder("%s, %s to %s: %.1f warm-days, %.0f %% of the time not measured"
                .formatted(
                        climate.container(),
                        days.longDay(climate.lived().from()),
                        days.longDay(climate.lived().until()),
                        climate.warmDays(),
                        100 * climate.lived().gapFraction()));
        climate.temperatureCelsius().ifPresent(range -> line.append(words("%.1f °C (%.1f to %.1f)", range)));
        climate.humidityPercent()
                .ifPresent(range -> line.append(words("humidity %.0f %% (%.0f to %.0f)", range))
                        .append("; mould index %.1f".formatted(climate.mould().value())));
        climate.dewPointCelsius().ifPresent(range -> line.append(words("dew point %.1f °C (%.1f to %.1f)", range)));
        answer.out().println(line.append('.'));
        answer.out().flush();
    }

    private static String words(String form, ClimateSummary.Range range) {
        return "; " + form.formatted(range.mean(), range.lowest(), range.highest());
    }
}
