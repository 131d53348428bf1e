package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
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
    private final List<Program> programs = new ArrayList<>();
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
        programs.forEach(Program::kill);
        wire.close();
    }

    @Test
    void theLoggerFirstAndTheDeskKilled() throws InterruptedException {
        Program logger = logger();
        awaitAcknowledged(15);
        assertThat(logger.err).anyMatch(line -> line.startsWith("The store is kept here"));

        Program desk = desk();
        desk.await(DeskStoreProgram.OPEN);
        long askedAtNanos = System.nanoTime();
        desk.await("P-1 ");
        assertThat(System.nanoTime() - askedAtNanos)
                .as("the desk shows what the logger hears within some seconds")
                .isLessThan(10_000_000_000L);
        desk.await(DeskStoreProgram.WATCHED + "P-1");
        assertThat(logger.err).anyMatch(line -> line.startsWith("The store is left to another Moultwright"));
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
        Program desk = desk();
        desk.await(DeskStoreProgram.OPEN);
        Program first = logger();
        awaitAcknowledged(15);
        assertThat(first.err).anyMatch(line -> line.startsWith("The store is left to another Moultwright (process"));
        desk.await("P-1 ");
        String firstHeard = acknowledged.get(0);
        awaitUntil(
                "the first reading is two seconds old",
                () -> saidTwoSecondsAgo().contains(firstHeard));
        List<String> heard = first.kill() ? saidTwoSecondsAgo() : List.of();
        awaitUntil("the spool of the killed logger is taken in", this::isNothingBeside);

        Program second = logger();
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

    private static long keptHere(Program logger) {
        return logger.err.stream()
                .filter(line -> line.startsWith("The store is kept here"))
                .count();
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

    private Program desk() {
        return start(new Program(DeskStoreProgram.class.getName(), store.toString()));
    }

    private Program logger() {
        Program logger = new Program(
                Launcher.class.getName(),
                "log",
                "--store",
                store.toString(),
                "--port",
                wire.port(),
                "--profile",
                "plain-number");
        logger.outListener = line -> acknowledged.add(line.split(",", -1)[1]);
        return start(logger);
    }

    private Program start(Program program) {
        programs.add(program);
        program.start();
        return program;
    }

    /** A program in a Java machine of its own. */
    private final class Program {
        private final List<String> command = new ArrayList<>(List.of(
                ProcessHandle.current().info().command().orElse("java"),
                "-XX:TieredStopAtLevel=1",
                "-Duser.home=" + folder,
                "-cp",
                System.getProperty("java.class.path")));
        private final List<String> out = new CopyOnWriteArrayList<>();
        private final List<String> err = new CopyOnWriteArrayList<>();
        private Consumer<String> outListener = line -> {};
        private Process process;

        Program(String... program) {
            command.addAll(List.of(program));
        }

        void start() {
            try {
                process = new ProcessBuilder(command).start();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            read(process.getInputStream(), line -> {
                out.add(line);
                outListener.accept(line);
            });
            read(process.getErrorStream(), err::add);
        }

        void await(String beginning) {
            awaitUntil("it says '" + beginning + "'", () -> out.stream().anyMatch(line -> line.startsWith(beginning)));
        }

        boolean kill() {
            process.toHandle().destroyForcibly();
            process.onExit().join();
            return true;
        }

        void end() throws InterruptedException {
            process.destroy();
            process.waitFor();
        }

        private void read(InputStream from, Consumer<String> action) {
            Thread reader = new Thread(() -> {
                try (BufferedReader lines = new BufferedReader(new InputStreamReader(from, StandardCharsets.UTF_8))) {
                    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                        action.accept(line);
                    }
                } catch (IOException killed) {
                    // What it said until then was read.
                }
            });
            reader.setDaemon(true);
            reader.start();
        }

        @Override
        public String toString() {
            return command.get(5) + " said " + out.subList(Math.max(0, out.size() - 3), out.size()) + ", told " + err;
        }
    }
}
