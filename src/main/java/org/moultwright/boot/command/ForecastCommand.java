package org.moultwright.boot.command;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.ForecastQuestion;
import org.moultwright.compute.forecast.Forecaster;
import org.moultwright.compute.forecast.PastBroods;
import org.moultwright.compute.forecast.PriorSource;
import org.moultwright.compute.forecast.SacForecast;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.text.DayWords;
import org.moultwright.text.ForecastWords;
import org.moultwright.text.LearnedWords;
import org.moultwright.text.SacWords;
import org.moultwright.text.Vocabulary;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code forecast}: when the trays of brood folders will moult, and how many animals will come of them. */
@Command(
        name = "forecast",
        description = "Says when each tray of a brood folder will moult, and how many slings will come.")
final class ForecastCommand implements Runnable {
    @Parameters(arity = "1..*", paramLabel = "FOLDER", description = "brood folders")
    List<Path> folders = List.of();

    @Option(
            names = "--as-of",
            paramLabel = "INSTANT",
            description = "use only what was known then (default: the last row)")
    Optional<Instant> asOf = Optional.empty();

    @Option(
            names = "--learn-from",
            paramLabel = "FOLDER",
            arity = "1..*",
            description = "completed broods of the same taxon to learn from")
    List<Path> learnFrom = List.of();

    @Option(names = "--seed", paramLabel = "N", description = "seed of the sampler (default: ${DEFAULT-VALUE})")
    long seed = 1;

    @Mixin
    OwnTimings own = new OwnTimings();

    @Mixin
    Answer answer = new Answer();

    @Override
    public void run() {
        List<BroodRecord> learned = new ArrayList<>();
        learnFrom.forEach(folder -> learned.add(Folders.whole(folder, answer.err())));
        List<BroodRecord> records = folders.stream()
                .map(folder -> Folders.whole(folder, answer.err()))
                .toList();
        Forecaster forecaster = new Forecaster(own.timings(answer.err()));
        Map<List<BroodRecord>, PastBroods> past = new HashMap<>();
        tellOfThoseThatTeachNobody(records, learned);
        for (BroodRecord record : records) {
            Instant now = asOf.orElseGet(() -> LastRow.of(record));
            List<BroodRecord> teaching = learned.stream()
                    .filter(other -> isOtherOfSpecies(other.brood(), record.brood()))
                    .toList();
            PastBroods others = past.computeIfAbsent(teaching, PastBroods::of);
            tell(record, forecaster.forecast(new ForecastQuestion(record, now, others, seed, List.of())));
        }
    }

    private void tellOfThoseThatTeachNobody(List<BroodRecord> records, List<BroodRecord> learned) {
        learned.stream()
                .map(BroodRecord::brood)
                .filter(other -> records.stream().noneMatch(record -> isOtherOfSpecies(other, record.brood())))
                .forEach(other -> answer.err()
                        .println("'%s' (%s) teaches nothing here: no other brood of its species is asked about"
                                .formatted(other.code(), other.taxon())));
    }

    private static boolean isOtherOfSpecies(Brood other, Brood brood) {
        return !other.code().equals(brood.code()) && other.taxon().equals(brood.taxon());
    }

    private void tell(Brood brood, Instant now, SacForecast sac, SacWords words) {
        answer.out().println("  Sac: " + words.age(sac) + ".");
        sac.moults().forEach(moult -> answer.out().println("    " + words.half(moult) + "."));
        words.pull(sac, brood, now).ifPresent(pull -> answer.out().println("    " + pull + ", " + SacWords.WHY));
    }

    private void tell(BroodRecord record, BroodForecast forecast) {
        ForecastWords words = new ForecastWords(
                Vocabulary.ENGLISH_HOBBY, new DayWords(record.brood().zone()));
        if (answer.json) {
            answer.document(new ForecastJson(words).of(forecast));
            return;
        }
        answer.out()
                .printf(
                        "%s on %s, %.1f warm-days old%n",
                        forecast.brood(), words.days().longDay(forecast.asOf()), forecast.warmDays());
        forecast.trays().forEach(tray -> answer.out().println("  " + words.sentence(tray, forecast.asOf())));
        forecast.sac()
                .ifPresent(sac ->
                        tell(record.brood(), forecast.asOf(), sac, new SacWords(words.vocabulary(), words.days())));
        forecast.yield()
                .ifPresent(count -> answer.out()
                        .printf(
                                "  Yield: %s %s.%n",
                                ForecastWords.count(count), words.stages(count, forecast.yieldInto())));
        if (forecast.priorFrom() == PriorSource.LEARNED || forecast.priorFrom() == PriorSource.TAXON) {
            LearnedWords.sentences(List.of(new LearnedWords.Learned(forecast, List.of())))
                    .forEach(sentence -> answer.out().println("  " + sentence));
        }
        forecast.notes().forEach(note -> answer.out().println("  " + words.note(note)));
        answer.out().flush();
    }
}
