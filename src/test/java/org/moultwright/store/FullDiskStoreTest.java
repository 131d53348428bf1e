package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.file.SmallDisk;
import org.moultwright.store.StoreException.Reason;
import org.moultwright.store.reading.Arrivals;
import org.moultwright.store.reading.H2ReadingLog;
import org.moultwright.workflow.AdvisedException;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.LogListener;
import org.moultwright.workflow.LogReadings;
import org.moultwright.workflow.ProbeLine;
import org.moultwright.workflow.ProbeLinks;
import org.moultwright.workflow.ProbeListener;
import org.moultwright.workflow.ReadingLog;
import org.moultwright.workflow.ReadingLog.Logged;
import org.moultwright.workflow.ReadingSource;

/**
 * What happens to a store on a full disk. Where this program may make a small disk of its own, that is truly
 * filled; everywhere the store is told that there is no room.
 */
class FullDiskStoreTest {
    private static final Instant START = Instant.parse("2026-03-01T20:00:00Z");
    private static final int IN_A_ROW = 5;
    private static final String PROBE = "P-1";

    @TempDir
    Path folder;

    @Test
    void loggingStopsWithOneSentenceAndGoesOnOnceThereIsRoom() throws IOException, InterruptedException {
        Path file = folder.resolve("room.store");
        H2Store.open(file).close();
        AtomicBoolean room = new AtomicBoolean(true);
        H2Transactions transactions = new H2Transactions(file, room::get);
        try {
            ReadingLog log = new H2ReadingLog(transactions, new Arrivals());
            requireLoggingGoesOn(log, () -> room.set(false), () -> room.set(true));
        } finally {
            transactions.close();
        }
    }

    @Test
    void onADiskThatIsTrulyFullToo(TestReporter reporter) throws IOException, InterruptedException {
        Optional<SmallDisk> made = SmallDisk.at(folder, 6);
        reporter.publishEntry("a small disk of its own", made.isPresent() ? "filled" : "may not be made here");
        if (made.isPresent()) {
            try (SmallDisk disk = made.get()) {
                onTrulyFull(disk);
            }
        }
    }

    private void onTrulyFull(SmallDisk disk) throws InterruptedException {
        Path file = disk.file("room.store");
        try (H2Store store = H2Store.open(file)) {
            requireLoggingGoesOn(store.readings(), disk::fill, disk::giveRoom);
            requireAnImportTooLargeLeavesNoTrace(store);
            disk.fill();
        }
        try (H2Store store = H2Store.open(file)) {
            assertThat(store.check().problems()).isEmpty();
            assertThat(all(store.readings()).size())
                    .as("all that was acknowledged, after closing on a full disk")
                    .isEqualTo(3 * IN_A_ROW + 1);
            assertThat(store.book().broods()).isEmpty();
        }
    }

    /** The database stops for good in the middle of the transaction. */
    private static void requireAnImportTooLargeLeavesNoTrace(H2Store store) {
        BroodRecord brood = BroodRecord.of(InventedBrood.brood("XX-26-A"));
        StoreException refusal =
                catchThrowableOfType(StoreException.class, () -> store.book().takeIn(brood, tooMany()));
        assertThat(refusal.reason()).isEqualTo(Reason.DISK_FULL);
        ReadingSeries before = all(store.readings());
        assertThat(before.size()).isEqualTo(3 * IN_A_ROW);
        store.readings().append(PROBE, List.of(reading(99)));
        assertThat(all(store.readings()).size()).isEqualTo(before.size() + 1);
        assertThat(store.book().broods()).isEmpty();
    }

    /** Numbers without a pattern, which no packing makes small. */
    private static ReadingSource tooMany() {
        SplittableRandom random = new SplittableRandom(1);
        return sink -> {
            for (int second = 0; second < 1_000_000; second++) {
                sink.accept(
                        "P-2",
                        new Reading(
                                START.plusSeconds(second),
                                random.nextDouble(20, 30),
                                random.nextDouble(100),
                                Quality.GOOD));
            }
        };
    }

    private static void requireLoggingGoesOn(ReadingLog log, Runnable fill, Runnable giveRoom)
            throws InterruptedException {
        Wire wire = new Wire();
        LogReadings logging = new LogReadings(log, PROBE, wire, Duration.ofMillis(20));
        Thread thread = new Thread(() -> logging.run(wire, new ProbeLine("port", "plain-number"), Optional.empty()));
        thread.start();
        wire.speaks(0);
        wire.requireTold(told(0));
        fill.run();
        wire.speaks(1);
        wire.requireTold(List.of("not kept ST-6"));
        wire.requireSilence();
        giveRoom.run();
        wire.requireTold(List.of("kept again " + IN_A_ROW));
        wire.requireTold(told(1));
        wire.speaks(2);
        wire.requireTold(told(2));
        logging.stop();
        thread.join();
        assertThat(all(log).size()).isEqualTo(3 * IN_A_ROW);
    }

    private static ReadingSeries all(ReadingLog log) {
        return log.series(PROBE, START, START.plus(Duration.ofDays(1)));
    }

    private static List<String> told(int row) {
        List<String> told = new ArrayList<>();
        for (int i = 0; i < IN_A_ROW; i++) {
            told.add("told " + reading(row * IN_A_ROW + i).rawLine());
        }
        return told;
    }

    private static Logged reading(int number) {
        return new Logged(new Reading(START.plusSeconds(number), 26, Double.NaN, Quality.GOOD), "reading " + number);
    }

    /** A wire that speaks when it is told to, and hears what is told of it. */
    private static final class Wire implements ProbeLinks, LogListener {
        private static final int MOST_SECONDS = 20;

        private final BlockingQueue<String> told = new LinkedBlockingQueue<>();
        private final BlockingQueue<ProbeListener> opened = new LinkedBlockingQueue<>();

        void speaks(int row) throws InterruptedException {
            ProbeListener listener = opened.take();
            for (int i = 0; i < IN_A_ROW; i++) {
                listener.heard(reading(row * IN_A_ROW + i));
            }
            opened.add(listener);
        }

        void requireTold(List<String> expected) throws InterruptedException {
            for (String words : expected) {
                assertThat(told.poll(MOST_SECONDS, TimeUnit.SECONDS)).isEqualTo(words);
            }
        }

        /** For some attempts more. */
        void requireSilence() throws InterruptedException {
            assertThat(told.poll(200, TimeUnit.MILLISECONDS)).isNull();
        }

        @Override
        public List<String> profiles() {
            return List.of();
        }

        @Override
        public Link open(ProbeLine line, ProbeListener listener) {
            opened.add(listener);
            return () -> {};
        }

        @Override
        public void heard(Logged logged) {
            told.add("told " + logged.rawLine());
        }

        @Override
        public void notKept(AdvisedException fault) {
            told.add("not kept " + fault.code());
        }

        @Override
        public void keptAgain(int waited) {
            told.add("kept again " + waited);
        }

        @Override
        public void lost(int readings) {
            told.add("lost " + readings);
        }

        @Override
        public void changed(LinkState state) {
            told.add("state");
        }

        @Override
        public void clockStepped(Instant seenAt, Duration by) {
            told.add("clock");
        }
    }
}
