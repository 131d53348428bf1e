package org.moultwright.boot.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.store.H2Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code readings}: writes a probe's readings as CSV. */
@Command(name = "readings", description = "Writes a probe's readings as CSV, good ones only unless told otherwise.")
final class ReadingsCommand implements Runnable {
    @Option(names = "--store", required = true, paramLabel = "FILE", description = "the store")
    Path store = Path.of("");

    @Option(names = "--probe", required = true, paramLabel = "CODE", description = "the probe's code")
    String probe = "";

    @Option(names = "--from", paramLabel = "T", description = "the first instant")
    Optional<Instant> from = Optional.empty();

    @Option(names = "--to", paramLabel = "T", description = "the instant after the last")
    Optional<Instant> to = Optional.empty();

    @Option(names = "--all", description = "suspect and faulty readings too")
    boolean all;

    @Mixin
    OutputOnly output = new OutputOnly();

    @Override
    public void run() {
        ReadingSeries series;
        try (H2Store open = Stores.existing(store)) {
            series = open.readings().series(probe, from.orElse(Instant.EPOCH), to.orElse(Stores.END_OF_TIME));
            if (series.isEmpty() && !open.readings().latest().containsKey(probe)) {
                throw new Refusal("There is no reading of a probe '%s' in '%s'.".formatted(probe, store));
            }
        }
        PrintWriter out = output.out();
        out.print(ReadingCsv.HEADER + "\r\n");
        for (int i = 0; i < series.size(); i++) {
            if (all || series.quality(i) == Quality.GOOD) {
                out.print(ReadingCsv.line(series.reading(i)) + "\r\n");
            }
        }
        out.flush();
    }
}
