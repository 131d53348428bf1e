package org.moultwright.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiConsumer;
import org.moultwright.compute.forecast.NoForecast;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.store.H2Store;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.ReadingLog.Logged;
import org.moultwright.workflow.Room;

/**
 * What the room costs after a saved sheet, in a store with a year of readings a minute apart of four probes,
 * one shared by all three broods and by those completed before. Forecasts are left out: they cost the same either way.
 *
 * <p>The baseline reads the history of the probes of the one brood written in anew, as {@code ReadingLog.of}
 * does; the room reads what came since. Arguments: days (365), sheets (21), completed broods (6).
 */
public final class RoomRefreshBenchmark {
    private static final Instant START = Instant.parse("2025-06-01T00:00:00Z");
    private static final List<String> BROODS = List.of("BB-26-A", "BB-26-B", "BB-26-C");
    private static final String SHARED = "P-0";

    private final H2Store store;
    private final int days;
    private final int sheets;
    private final int completed;
    private final Room room;
    private final Stopwatch first = new Stopwatch();
    private final Stopwatch reReading = new Stopwatch();
    private final Stopwatch afterSheet = new Stopwatch();
    private Instant now;

    private RoomRefreshBenchmark(H2Store store, int days, int sheets, int completed) {
        this.store = store;
        this.days = days;
        this.sheets = sheets;
        this.completed = completed;
        this.now = START.plus(Duration.ofDays(days));
        this.room = new Room(store.book(), store.readings(), NoForecast::of);
    }

    public static void main(String[] arguments) throws IOException {
        int days = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 365;
        int sheets = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 21;
        int completed = arguments.length > 2 ? Integer.parseInt(arguments[2]) : 6;
        Path folder = Files.createTempDirectory("room");
        try (H2Store store = H2Store.open(folder.resolve("room.store"))) {
            new RoomRefreshBenchmark(store, days, sheets, completed).run();
        }
    }

    private void run() {
        BROODS.forEach(code -> store.book().takeIn(record(code), this::handOver));
        for (int number = 1; number <= completed; number++) {
            BroodRecord past = InventedBrood.completed(
                    "BB-25-" + number,
                    START,
                    START.plus(Duration.ofDays(days / 2)),
                    List.of(InventedBrood.probe(SHARED, "incubator", START)));
            store.book().takeIn(past, sink -> {});
        }
        first.time(() -> room.at(now));
        for (int sheet = 0; sheet < sheets; sheet++) {
            String code = BROODS.get(sheet % BROODS.size());
            hear(SHARED, code);
            store.book().keep(deed(code));
            BroodRecord written = store.book().find(code).orElseThrow();
            reReading.time(() -> store.readings().of(written, now.plusMillis(1)).gathered());
            afterSheet.time(() -> room.at(now));
        }
        System.out.printf(
                "%d readings of each of %d probes, %d sheets, %d completed broods%n",
                days * 24 * 60, 1 + BROODS.size(), sheets, completed);
        report("the room for the first time, all histories read", first);
        report("after a sheet: reading one brood's histories anew (baseline)", reReading);
        report("after a sheet: the whole room, all broods, what is new read", afterSheet);
        System.out.printf("the whole room takes %.3f of the baseline%n", afterSheet.median() / reReading.median());
    }

    private void hear(String... probes) {
        now = now.plusSeconds(60);
        for (String probe : probes) {
            store.readings().append(probe, List.of(new Logged(reading(now), "")));
        }
    }

    private void handOver(BiConsumer<String, Reading> sink) {
        for (int minute = 0; minute < days * 24 * 60; minute++) {
            Reading reading = reading(START.plusSeconds(60L * minute));
            sink.accept(SHARED, reading);
            BROODS.forEach(code -> sink.accept(code, reading));
        }
    }

    private static Reading reading(Instant at) {
        double minute = at.getEpochSecond() / 60.0;
        double temperature = Math.round(2700 + 40 * Math.sin(minute / 230) + 7 * Math.sin(minute * 4.1)) / 100.0;
        return new Reading(at, temperature, Math.round(720 + 50 * Math.sin(minute / 500)) / 10.0, Quality.GOOD);
    }

    /** A brood whose box has a probe of the brood's own name, and stands in the incubator of the shared one. */
    private static BroodRecord record(String code) {
        return InventedBrood.measured(
                code,
                START,
                List.of(
                        InventedBrood.probe(SHARED, "incubator", START),
                        InventedBrood.probe(code, "box " + code, START)));
    }

    private Deed deed(String code) {
        return new Deed(
                new Deed.Summary(UUID.randomUUID(), code, now, "A1 counted"),
                Optional.empty(),
                Deed.Content.ofEntries(List.of(InventedBrood.opened(UUID.randomUUID(), now, 1))));
    }

    private static void report(String what, Stopwatch times) {
        System.out.printf(
                "%-62s median %8.1f ms (%.1f to %.1f)%n",
                what, 1000 * times.median(), 1000 * times.shortest(), 1000 * times.longest());
    }
}
