package org.moultwright.boot.command;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.moultwright.exchange.DelimitedReadings;
import org.moultwright.store.H2Store;
import org.moultwright.task.Progress;
import org.moultwright.workflow.DateOrder;
import org.moultwright.workflow.ReadingFiles;
import org.moultwright.workflow.ReadingMapping;
import org.moultwright.workflow.TakeInReadings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code take-in}: takes a file of readings into a store, understood as the desk would propose. */
@Command(
        name = "take-in",
        description = "Takes a file of readings, as a logger or a spreadsheet leaves it, into a store, as those of one"
                + " probe. Rows that are no reading are listed; if those are more, nothing is taken in.")
final class TakeInCommand implements Callable<Integer> {
    private static final int LISTED = 20;

    @Parameters(paramLabel = "CSV", description = "the file; delimiter, columns and dates are found by trying")
    Path file = Path.of("");

    @Option(
            names = "--store",
            required = true,
            paramLabel = "FILE",
            description = "the store; it is made if it is not there")
    Path store = Path.of("");

    @Option(names = "--probe", required = true, paramLabel = "CODE", description = "the probe's code")
    String probe = "";

    @Option(names = "--in", required = true, paramLabel = "CONTAINER", description = "where the probe stood")
    String container = "";

    @Option(
            names = "--zone",
            paramLabel = "ZONE",
            description = "the zone of its clock, such as Europe/Lisbon (default: this machine's)")
    Optional<String> zone = Optional.empty();

    @Option(
            names = "--dates",
            paramLabel = "ORDER",
            description = "the order of a date's parts: ${COMPLETION-CANDIDATES} (default: found by trying)")
    Optional<DateOrder> dates = Optional.empty();

    @Mixin
    Answer answer = new Answer();

    @Override
    public Integer call() {
        ReadingFiles files = new DelimitedReadings();
        ReadingMapping proposed = files.propose(file, zone());
        ReadingMapping mapping = dates.map(proposed::withDates).orElse(proposed);
        try (H2Store open = H2Store.open(store)) {
            TakeInReadings taker = new TakeInReadings(
                    files, open.bulkReadings(), open.book(), open.climate(), InstantSource.system(), UUID::randomUUID);
            tell(taker.takeIn(file, mapping, probe, container, new Unwatched()));
            return 0;
        } catch (TakeInReadings.NotUnderstood fault) {
            answer.err().println(fault.getMessage());
            list(fault.listed());
            return 1;
        }
    }

    private ZoneId zone() {
        try {
            return zone.map(ZoneId::of).orElseGet(ZoneId::systemDefault);
        } catch (DateTimeException unknown) {
            throw new Refusal("'" + zone.orElse("") + "' is no zone such as Europe/Lisbon.");
        }
    }

    private void tell(TakeInReadings.Result result) {
        list(result.listed());
        if (answer.json) {
            answer.document(JsonNodeFactory.instance
                    .objectNode()
                    .put("readings", result.readings())
                    .put("added", result.added())
                    .put("unused", result.unused()));
        } else {
            answer.out()
                    .println("%s in %s: %d readings, %d of them new; %d rows are none"
                            .formatted(probe, container, result.readings(), result.added(), result.unused()));
        }
        answer.out().flush();
    }

    /** Nobody looks on, and nobody calls it off but by ending the program, which keeps nothing. */
    private record Unwatched() implements Progress {
        @Override
        public void report(double fraction, String words) {}

        @Override
        public boolean isCancelled() {
            return false;
        }
    }

    private void list(List<ReadingFiles.Row> rows) {
        rows.stream()
                .limit(LISTED)
                .forEach(row -> answer.err().println("%s, line %d: %s".formatted(file, row.line(), row.reason())));
        if (rows.size() > LISTED) {
            answer.err().println("%d further rows are no readings.".formatted(rows.size() - LISTED));
        }
        answer.err().flush();
    }
}
