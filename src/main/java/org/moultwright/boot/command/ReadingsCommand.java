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
        try (H2Store open = Stores.existing(store)) {
            Instant begin = from.orElse(Instant.EPOCH);
            Instant end = to.orElse(Stores.END_OF_TIME);
            if (open.readings().earliest(probe).isEmpty()) {
                throw new Refusal("There is no reading of a probe '%s' in '%s'.".formatted(probe, store));
            }
            PrintWriter out = output.out();
            out.print(ReadingCsv.HEADER + "\r\n");
            open.readings().each(probe, begin, end, piece -> print(piece, out));
            out.flush();
        }
    }

    private void print(ReadingSeries piece, PrintWriter out) {
        for (int i = 0; i < piece.size(); i++) {
            if (all || piece.quality(i) == Quality.GOOD) {
                out.print(ReadingCsv.line(piece.reading(i)) + "\r\n");
            }
        }
    }
}
