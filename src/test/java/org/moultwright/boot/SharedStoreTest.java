package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.device.serial.VirtualWire;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.store.H2Store;

/**
 * The logger and what stands for the desk as real processes on one store, over a pseudo-terminal on which every value
 * is said once: started in either order, killed one by one and both. Nothing acknowledged may be lost, and nothing be
 * there twice.
 */
class SharedStoreTest {
    private static final long SECONDS_TO_WAIT = 40;
    private static final long NANOS_APART = 40_000_000;

    @TempDir
    Path folder;

    private Path store;
    private VirtualWire wire;
    private Thread speaker;
    private final Map<String, Long> saidAtNanos = new HashMap<>();
    private final List<ChildProgram> programs = new ArrayList<>();
    private final List<String> acknowledged = new CopyOnWriteArrayList<>();

    @BeforeEach
    void plugIn() throws IOException {
        VirtualWire.assumeAvailable();
        store = folder.resolve("room.store");
        wire = VirtualWire.plugIn(folder);
        speaker = new Thread(this::speak, "probe");
        speaker.setDaemon(true);
        speaker.start();
    }

    @AfterEach
    void unplug() throws IOException {
        speaker.interrupt();
        programs.forEach(ChildProgram::kill);
        wire.close();
    }

    @Test
    void theLoggerFirstAndTheDeskKilled() throws InterruptedException {
        ChildProgram logger = logger();
        awaitAcknowledged(15);
        assertThat(logger.err()).anyMatch(line -> line.startsWith("The store is kept here"));

        ChildProgram desk = desk();
        awaitSaid(desk, DeskStoreProgram.OPEN);
        long askedAtNanos = System.nanoTime();
        awaitSaid(desk, "P-1 ");
        assertThat(System.nanoTime() - askedAtNanos)
                .as("the desk shows what the logger hears within some seconds")
                .isLessThan(10_000_000_000L);
        awaitSaid(desk, DeskStoreProgram.WATCHED + "P-1");
        assertThat(logger.err()).anyMatch(line -> line.startsWith("The store is left to another Moultwright"));
        awaitAcknowledged(15);

        desk.kill();
        long takenBefore = keptHere(logger);
        awaitUntil("the logger has the store again", () -> keptHere(logger) > takenBefore);
        awaitAcknowledged(15);
        logger.end();
        assertAllThereOnce();
    }

    @Test
    void theDeskFirstTheLoggerKilledAndThenBoth() throws IOException, InterruptedException {
        ChildProgram desk = desk();
        awaitSaid(desk, DeskStoreProgram.OPEN);
        ChildProgram first = logger();
        awaitAcknowledged(15);
        assertThat(first.err()).anyMatch(line -> line.startsWith("The store is left to another Moultwright (process"));
        awaitSaid(desk, "P-1 ");
        String firstHeard = acknowledged.get(0);
        awaitUntil(
                "the first reading is two seconds old",
                () -> saidTwoSecondsAgo().contains(firstHeard));
        first.kill();
        List<String> heard = saidTwoSecondsAgo();
        awaitUntil("the spool of the killed logger is taken in", this::isNothingBeside);

        ChildProgram second = logger();
        awaitAcknowledged(15);
        desk.kill();
        second.kill();
        assertAllThereOnce();
        try (H2Store open = H2Store.open(store)) {
            ReadingSeries kept = open.readings().series("P-1", Instant.EPOCH, Instant.MAX);
            List<String> values = new ArrayList<>();
            kept.forEach(reading -> values.add(Double.toString(reading.temperatureCelsius())));
            assertThat(values)
                    .as("all that was said two seconds and more before the kill")
                    .containsAll(heard.subList(heard.indexOf(firstHeard), heard.size()));
        }
    }

    private void assertAllThereOnce() {
        try (H2Store open = H2Store.open(store)) {
            assertThat(open.check().problems()).isEmpty();
            List<String> kept = new ArrayList<>();
            open.readings()
                    .series("P-1", Instant.EPOCH, Instant.MAX)
                    .forEach(reading -> kept.add(Double.toString(reading.temperatureCelsius())));
            assertThat(kept).doesNotHaveDuplicates().containsAll(acknowledged);
        }
        assertThat(isNothingBeside()).isTrue();
    }

    private boolean isNothingBeside() {
        Path beside = store.resolveSibling("room.store.spool");
        try (Stream<Path> files = Files.exists(beside) ? Files.list(beside) : Stream.of()) {
            return files.findAny().isEmpty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void awaitAcknowledged(int more) {
        int before = acknowledged.size();
        awaitUntil(more + " more are acknowledged", () -> acknowledged.size() >= before + more);
    }

    private static long keptHere(ChildProgram logger) {
        return logger.told("The store is kept here");
    }

    private void awaitUntil(String what, BooleanSupplier holds) {
        long beganAtNanos = System.nanoTime();
        while (!holds.getAsBoolean()) {
            if (System.nanoTime() - beganAtNanos > SECONDS_TO_WAIT * 1_000_000_000L) {
                fail("waited %d s until %s; %s", SECONDS_TO_WAIT, what, programs);
            }
            LockSupport.parkNanos(10_000_000);
        }
    }

    /** Each value once, as no two readings of a real probe need be told apart and here they must. */
    private void speak() {
        for (int number = 2001; number < 8000 && !Thread.currentThread().isInterrupted(); number++) {
            String value = String.format(Locale.ROOT, "%.2f", number / 100.0);
            try {
                wire.say(value + "\n");
            } catch (IOException pulled) {
                return;
            }
            synchronized (saidAtNanos) {
                saidAtNanos.put(Double.toString(Double.parseDouble(value)), System.nanoTime());
            }
            LockSupport.parkNanos(NANOS_APART);
        }
    }

    private List<String> saidTwoSecondsAgo() {
        long nanos = System.nanoTime() - 2_000_000_000L;
        synchronized (saidAtNanos) {
            return saidAtNanos.entrySet().stream()
                    .filter(said -> said.getValue() - nanos < 0)
                    .sorted(Map.Entry.comparingByValue())
                    .map(Map.Entry::getKey)
                    .toList();
        }
    }

    private static void awaitSaid(ChildProgram program, String beginning) {
        program.await(
                "it says '" + beginning + "'",
                () -> program.out().stream().anyMatch(line -> line.startsWith(beginning)));
    }

    private ChildProgram desk() {
        return started(line -> {}, DeskStoreProgram.class.getName(), store.toString());
    }

    private ChildProgram logger() {
        return started(
                line -> acknowledged.add(line.split(",", -1)[1]),
                Launcher.class.getName(),
                "log",
                "--store",
                store.toString(),
                "--port",
                wire.port(),
                "--profile",
                "plain-number");
    }

    private ChildProgram started(Consumer<String> outListener, String... program) {
        ChildProgram started = new ChildProgram(folder, List.of(), outListener, program);
        programs.add(started);
        return started;
    }
}
