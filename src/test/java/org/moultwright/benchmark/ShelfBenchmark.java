package org.moultwright.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.stream.IntStream;
import javafx.application.Platform;
import org.moultwright.compute.forecast.NoForecast;
import org.moultwright.domain.BroodRecord;
import org.moultwright.store.H2Store;
import org.moultwright.ui.shelf.MeasuredShelf;
import org.moultwright.workflow.ArrangeShelf;
import org.moultwright.workflow.InventedShelf;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.Room;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.ShelfAt;

/**
 * What the shelf costs with 60 broods in 400 trays: putting it together, opening the screen until all of it is laid
 * out, stepping from card to card, and a move until it is on disk. Forecasts are left out. Needs a display or a
 * headless toolkit.
 */
public final class ShelfBenchmark {
    private static final int BROODS = 60;
    private static final int TRAYS = 400;
    private static final int TIMES = 15;

    private ShelfBenchmark() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("shelf");
        try (H2Store store = H2Store.open(folder.resolve("room.store"))) {
            fill(store);
            Room room = new Room(store.book(), store.readings(), NoForecast::of);
            RoomView read = room.at(InventedShelf.NOW);
            Stopwatch refresh = new Stopwatch();
            Stopwatch assembling = new Stopwatch();
            Stopwatch moving = new Stopwatch();
            ArrangeShelf arrange = new ArrangeShelf(store.book(), () -> InventedShelf.NOW, UUID::randomUUID);
            for (int time = 0; time < TIMES; time++) {
                assembling.time(() -> ShelfAt.of(read, read.now()));
                String to = time % 2 == 0 ? "box 2" : "box 1";
                moving.time(() -> arrange.move("T1", Optional.of(to), InventedShelf.NOW));
                refresh.time(() -> room.at(InventedShelf.NOW));
            }
            Stopwatch opening = new Stopwatch();
            Stopwatch stepping = new Stopwatch();
            onToolkit(() -> {
                for (int time = 0; time < TIMES; time++) {
                    MeasuredShelf shelf = new MeasuredShelf(read);
                    opening.time(shelf::open);
                    stepping.time(shelf::step);
                }
            });
            System.out.printf("%d broods, %d trays, %d times%n", BROODS, TRAYS, TIMES);
            report("the shelf put together from the room", assembling);
            report("the screen opened, styled, laid out and drawn", opening);
            report("one step from card to card, laid out and drawn", stepping);
            report("a tray moved, until it is on disk", moving);
            report("the room read again after a move", refresh);
        }
        Platform.exit();
    }

    private static void fill(H2Store store) {
        for (int brood = 0; brood < BROODS; brood++) {
            int first = TRAYS * brood / BROODS;
            int last = TRAYS * (brood + 1) / BROODS;
            List<String> trays = new ArrayList<>(IntStream.range(first, last)
                    .mapToObj(tray -> "T" + (tray + 1))
                    .toList());
            BroodRecord record =
                    InventedShelf.brood("BB-26-%02d".formatted(brood), "box " + (1 + brood / 6), trays, List.of());
            store.book().takeIn(record, ReadingSource.of(record));
        }
    }

    private static void onToolkit(Runnable work) throws InterruptedException {
        CountDownLatch done = new CountDownLatch(1);
        Platform.startup(() -> {
            work.run();
            done.countDown();
        });
        done.await();
    }

    private static void report(String what, Stopwatch times) {
        System.out.printf(
                "%-50s median %8.1f ms (%.1f to %.1f)%n",
                what, 1000 * times.median(), 1000 * times.shortest(), 1000 * times.longest());
    }
}
