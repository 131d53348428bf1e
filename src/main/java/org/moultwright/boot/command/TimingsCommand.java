package org.moultwright.boot.command;

import java.util.Locale;
import java.util.stream.Collectors;
import org.moultwright.domain.AssumedTiming;
import org.moultwright.exchange.TimingsFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code timings}: what is assumed of species' timing, where from, and where the keeper's own file is. */
@Command(name = "timings", description = "Says what is assumed of each species' timing, and where to change it.")
final class TimingsCommand implements Runnable {
    @Option(
            names = "--copy",
            description = "puts a copy of the shipped file where one's own is looked for, unless there is one")
    boolean copy;

    @Mixin
    OwnTimings own = new OwnTimings();

    @Mixin
    OutputOnly output = new OutputOnly();

    @Override
    public void run() {
        TimingsFile file = own.file();
        if (copy && !file.copyShipped()) {
            throw new Refusal("'%s' is there already and stays as it is.".formatted(file.place()));
        }
        TimingsFile.Loaded loaded = file.load();
        loaded.timings().all().forEach(this::tell);
        output.out().println("Your own file: " + file.place());
        output.out().flush();
        loaded.problem().ifPresent(problem -> {
            throw new Refusal(problem);
        });
    }

    private void tell(AssumedTiming assumed) {
        String medians = assumed.timing().medianWarmDays().entrySet().stream()
                .map(median ->
                        String.format(Locale.ROOT, "%s %.1f", median.getKey().key(), median.getValue()))
                .collect(Collectors.joining(", "));
        output.out().println(assumed.taxon() + ", from " + assumed.file());
        output.out().println("  warm-days: " + medians);
        output.out()
                .printf(
                        Locale.ROOT,
                        "  batch sd %.2f, stage sd %.2f, rate %s%n",
                        assumed.timing().batchSd(),
                        assumed.stageSd(),
                        assumed.timing().rate().key());
        assumed.sources().forEach((figure, source) -> output.out().println("  " + figure + ": " + source));
    }
}
