package org.moultwright.benchmark;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.IntStream;
import org.moultwright.compute.forecast.Forecaster;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.ProbeStay;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.workflow.Room;
import org.moultwright.workflow.RoomView;

/**
 * What it takes to look into a room whose probes have spoken for years: time and memory of the first look, and time of
 * the next. The argument is the folder of a record that {@link RecordBenchmark} kept; broods are written into its store.
 */
public final class RoomMemoryBenchmark {
    private static final int COMPLETED = 6;
    private static final int LIVING = 3;
    private static final Duration LIFE = Duration.ofDays(77);
    private static final double MEBI = 1 << 20;

    private RoomMemoryBenchmark() {}

    public static void main(String[] arguments) {
        Path file = Path.of(arguments[0]).resolve("room.store");
        try (H2Store store = H2Store.open(file)) {
            Instant now = store.readings().latest().get("P-0").takenAt();
            Instant first = store.readings().earliest("P-0").orElseThrow();
            write(store, first, now);
            double before = usedMebibytes();
            Room room = new Room(store.book(), store.readings(), new Forecaster(TimingsFile.shipped())::forecast);
            Stopwatch opening = new Stopwatch();
            RoomView[] view = new RoomView[1];
            opening.time(() -> view[0] = room.at(now));
            System.out.printf(
                    "first look: %.1f s, %.0f MiB kept for %d broods over %d days%n",
                    opening.median(),
                    usedMebibytes() - before,
                    view[0].broods().size(),
                    Duration.between(first, now).toDays());
            Stopwatch next = new Stopwatch();
            next.time(() -> view[0] = room.at(now.plusSeconds(60)));
            System.out.printf("next look: %.3f s%n", next.median());
        }
        System.exit(0);
    }

    /** Broods of the same incubator, whose probes have stood there from the beginning on. */
    private static void write(H2Store store, Instant first, Instant now) {
        for (int i = 0; i < COMPLETED; i++) {
            Instant opened = first.plus(Duration.ofDays(100L + 200L * i));
            take(store, InventedBrood.completed("BB-2" + i + "-A", opened, opened.plus(LIFE), probes(first)));
        }
        for (int i = 0; i < LIVING; i++) {
            take(
                    store,
                    InventedBrood.measured(
                            "CC-26-" + (char) ('A' + i), now.minus(LIFE.dividedBy(i + 1)), probes(first)));
        }
    }

    private static List<ProbeStay> probes(Instant from) {
        return IntStream.range(0, 4)
                .mapToObj(i -> InventedBrood.probe("P-" + i, i == 0 ? "incubator" : "box " + i, from))
                .toList();
    }

    private static void take(H2Store store, BroodRecord record) {
        boolean isThere = store.book().find(record.brood().code()).isPresent();
        if (!isThere) {
            store.book().takeIn(record, sink -> {});
        }
    }

    private static double usedMebibytes() {
        System.gc();
        Runtime machine = Runtime.getRuntime();
        return (machine.totalMemory() - machine.freeMemory()) / MEBI;
    }
}
