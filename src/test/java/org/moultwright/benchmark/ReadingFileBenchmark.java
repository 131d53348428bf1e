package org.moultwright.benchmark;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.InventedBrood;
import org.moultwright.exchange.DelimitedReadings;
import org.moultwright.store.H2Store;
import org.moultwright.task.Progress;
import org.moultwright.workflow.ReadingMapping;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.TakeInReadings;
import org.moultwright.workflow.UndoDeed;

/**
 * How fast a file of a million rows is proposed, read, taken in and taken back. Arguments: rows (1000000) and the
 * seconds between them (10, as loggers of boxes write; the rarer they are, the more each costs to pack).
 */
public final class ReadingFileBenchmark {
    private static final Instant START = Instant.parse("2024-01-01T00:00:00Z");

    private ReadingFileBenchmark() {}

    public static void main(String[] arguments) throws IOException {
        int rows = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 1_000_000;
        int seconds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 10;
        Path folder = Files.createTempDirectory("readings");
        Path file = write(folder.resolve("logger.csv"), rows, seconds);
        DelimitedReadings files = new DelimitedReadings();
        Stopwatch proposing = new Stopwatch();
        Stopwatch reading = new Stopwatch();
        Stopwatch taking = new Stopwatch();
        Stopwatch again = new Stopwatch();
        Stopwatch takingBack = new Stopwatch();
        proposing.time(() -> files.propose(file, ZoneId.of("Europe/Lisbon")));
        ReadingMapping mapping = files.propose(file, ZoneId.of("Europe/Lisbon"));
        reading.time(() -> files.each(file, mapping, (row, share) -> {}));
        try (H2Store store = H2Store.open(folder.resolve("room.store"))) {
            BroodRecord brood = InventedBrood.measured("XX-26-A", START, List.of());
            store.book().takeIn(brood, ReadingSource.of(brood));
            TakeInReadings taker = new TakeInReadings(
                    files, store.bulkReadings(), store.book(), store.climate(), () -> Instant.now(), UUID::randomUUID);
            taking.time(() -> taker.takeIn(file, mapping, "P-9", "A1", new Silent()));
            again.time(() -> taker.takeIn(file, mapping, "P-9", "A1", new Silent()));
            UndoDeed undo = new UndoDeed(store.book(), Instant::now, UUID::randomUUID);
            takingBack.time(undo::undo);
        }
        System.out.printf(
                "%,d rows, %,d s apart, %,d bytes: proposed %.2f s, read %.2f s, taken in %.2f s (%,.0f rows/s), the same again %.2f s, taken back %.2f s%n",
                rows,
                seconds,
                Files.size(file),
                proposing.median(),
                reading.median(),
                taking.median(),
                rows / taking.median(),
                again.median(),
                takingBack.median());
    }

    private static Path write(Path file, int rows, int seconds) throws IOException {
        try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(file))) {
            out.print("Zeit;Temperatur [°C];Feuchte [%]\n");
            for (int i = 0; i < rows; i++) {
                Instant at = START.plusSeconds((long) seconds * i);
                out.printf(
                        "%s;%d,%02d;%d\n", at.toString().replace('T', ' ').replace("Z", ""), 26, i % 100, 70 + i % 9);
            }
        }
        return file;
    }

    private static final class Silent implements Progress {
        @Override
        public void report(double fraction, String words) {}

        @Override
        public boolean isCancelled() {
            return false;
        }
    }
}
