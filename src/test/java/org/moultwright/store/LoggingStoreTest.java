package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.file.SmallDisk;
import org.moultwright.store.StoreException.Reason;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ReadingLog.Logged;
import org.moultwright.workflow.TakenBeside;

class LoggingStoreTest {
    private static final Instant START = Instant.parse("2026-03-01T20:00:00Z");
    private static final ProbeIdentity SENSOR = ProbeIdentity.ofSensor("28FF641E");

    @TempDir
    Path folder;

    private final List<String> turns = new ArrayList<>();
    private int next;

    @Test
    void whoeverAsksIsGivenTheStoreAndTheLoggerGoesOnBesideIt() throws Exception {
        Path file = folder.resolve("room.store");
        try (LoggingStore logger = logger(file);
                Ticking ticking = new Ticking(logger)) {
            assertThat(ticking.isAlive()).isTrue();
            log(logger, 5);
            logger.identified("P-1", SENSOR, START);
            try (H2Store desk = H2Store.open(file)) {
                assertThat(turns).containsExactly("has", "left");
                log(logger, 5);
                assertThat(read(desk).size()).isEqualTo(5);
                List<TakenBeside> taken = desk.takeInSpools();
                assertThat(taken)
                        .singleElement()
                        .satisfies(part -> assertThat(part.readings()).hasSize(5));
                assertThat(read(desk).size()).isEqualTo(10);
                assertThat(desk.takeInSpools()).as("each once").isEmpty();
                assertThat(desk.sensor("P-1", START.plusSeconds(1))).contains(SENSOR);
                assertThat(desk.sensor("P-1", START.minusSeconds(1))).isEmpty();
            }
            log(logger, 5);
            awaitTurns(4);
            log(logger, 5);
            assertThat(turns)
                    .as("what it left beside the store itself it takes in before it goes on")
                    .containsExactly("has", "left", "has", "taken 5");
        }
        requireAllOnce(file, 20);
    }

    @Test
    void anotherLoggerLeavesItsReadingsToTheFirst() throws IOException {
        Path file = folder.resolve("room.store");
        try (LoggingStore first = logger(file)) {
            try (LoggingStore second = logger(file)) {
                second.tick();
                assertThat(turns).containsExactly("has", "left");
                log(second, 7);
            }
            LockSupport.parkNanos(1_100_000_000);
            first.tick();
            assertThat(turns).containsExactly("has", "left", "taken 7");
        }
        requireAllOnce(file, 7);
    }

    @Test
    void aLineCutShortIsLeftAndADamagedOneKeptAside() throws IOException {
        Path file = folder.resolve("room.store");
        try (H2Store desk = H2Store.open(file)) {
            LoggingStore logger = logger(file);
            log(logger, 3);
            Path spool = spools().get(0);
            Files.writeString(spool, "reading\tP-1\t99\t21.0\tNaN\tgood\t21.0\tbad\n", StandardOpenOption.APPEND);
            Files.writeString(spool, "reading\tP-1\t99", StandardOpenOption.APPEND);
            assertThat(desk.takeInSpools())
                    .singleElement()
                    .satisfies(part -> assertThat(part.readings()).hasSize(3));
            logger.close();
            desk.takeInSpools();
            assertThat(read(desk).size()).isEqualTo(3);
            assertThat(spools())
                    .singleElement()
                    .satisfies(aside -> assertThat(aside.toString()).endsWith(".damaged"));
        }
    }

    @Test
    void aSpoolTakenInWhoseRemovalWasLostIsNotTakenInTwice() throws IOException {
        Path file = folder.resolve("room.store");
        try (H2Store desk = H2Store.open(file)) {
            Path spool;
            byte[] lines;
            try (LoggingStore logger = logger(file)) {
                log(logger, 9);
                spool = spools().get(0);
                lines = Files.readAllBytes(spool);
            }
            desk.takeInSpools();
            assertThat(spool).doesNotExist();
            Files.write(spool, lines);
            desk.takeInSpools();
            assertThat(spool).doesNotExist();
        }
        requireAllOnce(file, 9);
    }

    @Test
    void onAFullDiskNothingIsAcknowledgedAndItGoesOnWhenThereIsRoom() throws IOException {
        Optional<SmallDisk> made = SmallDisk.at(folder, 6);
        assumeTrue(made.isPresent(), "this machine lets no small disk be made");
        try (SmallDisk disk = made.get()) {
            Path file = disk.file("room.store");
            try (H2Store desk = H2Store.open(file);
                    LoggingStore logger = logger(file)) {
                log(logger, 4);
                disk.fill();
                Logged refused = reading();
                for (int attempt = 0; attempt < 2; attempt++) {
                    StoreException fault =
                            catchThrowableOfType(StoreException.class, () -> logger.append("P-1", List.of(refused)));
                    assertThat(fault.reason()).isEqualTo(Reason.DISK_FULL);
                }
                assertThat(catchThrowableOfType(StoreException.class, desk::takeInSpools)
                                .reason())
                        .isEqualTo(Reason.DISK_FULL);
                disk.giveRoom();
                logger.append("P-1", List.of(refused));
                desk.takeInSpools();
            }
            requireAllOnce(file, 5);
        }
    }

    @Test
    void whateverIsDoneInWhateverOrderNothingIsLostOrTwice() throws IOException {
        Path file = folder.resolve("room.store");
        SplittableRandom random = new SplittableRandom(20260303);
        int logged = 0;
        Optional<H2Store> desk = Optional.empty();
        LoggingStore logger = logger(file);
        for (int step = 0; step < 60; step++) {
            int count = random.nextInt(4);
            log(logger, count);
            logged += count;
            int what = random.nextInt(4);
            if (what == 0) {
                desk.ifPresent(H2Store::takeInSpools);
            } else if (what == 1) {
                logger.close();
                logger = logger(file);
            } else if (what == 2 && desk.isPresent()) {
                desk.get().close();
                desk = Optional.empty();
            } else if (what == 3 && desk.isEmpty()) {
                try (Ticking ticking = new Ticking(logger)) {
                    desk = Optional.of(H2Store.open(file));
                    assertThat(ticking.isAlive()).isTrue();
                }
            }
        }
        logger.close();
        desk.ifPresent(H2Store::close);
        requireAllOnce(file, logged);
    }

    private LoggingStore logger(Path file) {
        return new LoggingStore(file, InstantSource.fixed(START), new LoggingStore.Turns() {
            @Override
            public void has(H2Store store) {
                note("has");
            }

            @Override
            public void leftTo(String who) {
                note("left");
            }

            @Override
            public void taken(List<TakenBeside> taken) {
                note("taken " + taken.get(0).readings().size());
            }
        });
    }

    private void note(String turn) {
        synchronized (turns) {
            turns.add(turn);
        }
    }

    private void awaitTurns(int count) {
        long beganAtNanos = System.nanoTime();
        while (turns.size() < count && System.nanoTime() - beganAtNanos < 20_000_000_000L) {
            LockSupport.parkNanos(10_000_000);
        }
    }

    private void log(LoggingStore logger, int count) {
        for (int i = 0; i < count; i++) {
            logger.append("P-1", List.of(reading()));
        }
    }

    private Logged reading() {
        next++;
        Reading reading = new Reading(START.plusSeconds(next), next / 100.0, Double.NaN, Quality.GOOD);
        return new Logged(reading, "t\t=\\" + next + "\n");
    }

    private List<Path> spools() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("room.store.spool"))) {
            return files.toList();
        }
    }

    private static ReadingSeries read(H2Store store) {
        return store.readings().series("P-1", Instant.MIN, Instant.MAX);
    }

    private static void requireAllOnce(Path file, int count) throws IOException {
        try (H2Store store = H2Store.open(file)) {
            assertThat(store.check().problems()).isEmpty();
            ReadingSeries readings = read(store);
            assertThat(readings.size()).isEqualTo(count);
            for (int i = 0; i < count; i++) {
                assertThat(readings.temperatureCelsius(i)).isEqualTo((i + 1) / 100.0);
            }
        }
        Path beside = file.resolveSibling("room.store.spool");
        if (Files.exists(beside)) {
            assertThat(beside).isEmptyDirectory();
        }
    }

    /** Calls a logger's tick on a thread of its own. */
    private static final class Ticking implements AutoCloseable {
        private final Thread thread;

        Ticking(LoggingStore logger) {
            this.thread = new Thread(() -> {
                while (!Thread.currentThread().isInterrupted()) {
                    logger.tick();
                    LockSupport.parkNanos(20_000_000);
                }
            });
            thread.start();
        }

        boolean isAlive() {
            return thread.isAlive();
        }

        @Override
        public void close() {
            thread.interrupt();
            try {
                thread.join();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
