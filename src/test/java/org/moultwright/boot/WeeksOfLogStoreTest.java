package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.boot.command.ToldLogger;
import org.moultwright.device.serial.VirtualWire;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.file.SmallDisk;
import org.moultwright.store.H2Store;

/**
 * Three weeks of {@code log} as a program of its own over a pseudo-terminal: the wire is pulled a hundred times, the
 * clock leaps on and back between, the program is stopped as by a suspend, the disk is full for a while. Every value
 * said while the port was open is there once, and the program is no larger at the end.
 */
@EnabledOnOs(OS.LINUX)
class WeeksOfLogStoreTest {
    private static final int UNPLUGS = 100;
    private static final int LINES = 200;
    private static final int WARMED_UP = 30;
    private static final Duration SLEPT = Duration.ofHours(6);
    private static final Duration SET_BACK = Duration.ofHours(-2);
    private static final int DISK_MEGABYTES = 64;
    private static final int HEAP_MEGABYTES = 48;
    private static final long GROWTH_BYTES = 3_000_000;
    private static final int JAVAS_OWN = 10;

    @TempDir
    Path folder;

    private final List<String> said = new ArrayList<>();
    private final List<String> acknowledged = new CopyOnWriteArrayList<>();
    private final AtomicInteger count = new AtomicInteger();
    private Optional<SmallDisk> disk = Optional.empty();
    private Path store;
    private ChildProgram logger;
    private VirtualWire wire;

    @BeforeEach
    void start() throws IOException {
        VirtualWire.assumeAvailable();
        Path small = Files.createDirectory(folder.resolve("small"));
        disk = SmallDisk.at(small, DISK_MEGABYTES);
        store = small.resolve("room.store");
        logger = new ChildProgram(
                folder,
                List.of("-Xmx" + HEAP_MEGABYTES + "m", "-XX:+UseSerialGC"),
                line -> {
                    acknowledged.add(line.split(",", -1)[1]);
                    count.incrementAndGet();
                },
                ToldLogger.class.getName(),
                folder.resolve("native").toString(),
                "--store",
                store.toString(),
                "--port",
                folder.resolve("port").toString(),
                "--profile",
                "plain-number");
        logger.await("it looks for its port", () -> logger.err().stream().anyMatch(line -> line.endsWith("[DE-3]")));
    }

    @AfterEach
    void end() throws IOException {
        logger.kill();
        wire.close();
        disk.ifPresent(SmallDisk::close);
    }

    @Test
    void everyValueIsKeptOnceAndNothingGrows(TestReporter reporter) throws IOException, InterruptedException {
        Size early = new Size(0, 0, 0);
        for (int unplug = 0; unplug < UNPLUGS; unplug++) {
            plugIn();
            say(LINES / 2);
            setClock(unplug % 10 == 9 ? SET_BACK : SLEPT);
            say(LINES / 2);
            if (unplug % 25 == 24) {
                suspendAndResume();
            }
            if (unplug == UNPLUGS / 2) {
                fillTheDisk();
            }
            awaitAllAcknowledged();
            if (unplug == WARMED_UP) {
                early = size();
            }
            if (unplug < UNPLUGS - 1) {
                wire.pull();
            }
        }
        Size late = size();
        assertThat(logger.end()).as("ended as a service is: %s", logger).isEqualTo(143);
        assertThat(logger.told("The clock was set or the machine slept")).isEqualTo(UNPLUGS);
        assertThat(logger.told("The wire is gone.")).isEqualTo(UNPLUGS - 1);
        // Java's own come and go; one left behind by each unplug would be dozens.
        assertThat(late.threads()).as("%s, then %s", early, late).isLessThan(early.threads() + JAVAS_OWN);
        assertThat(late.files()).as("%s, then %s", early, late).isLessThan(early.files() + JAVAS_OWN);
        assertThat(late.heapBytes()).as("%s, then %s", early, late).isLessThan(early.heapBytes() + GROWTH_BYTES);
        reporter.publishEntry(
                "%d readings, %d unplugs".formatted(said.size(), UNPLUGS), "%s, at the end %s".formatted(early, late));
        assertThat(acknowledged).containsExactlyElementsOf(said);
        assertAllKept();
    }

    private void assertAllKept() {
        try (H2Store open = H2Store.open(store)) {
            assertThat(open.check().problems()).isEmpty();
            ReadingSeries kept = open.readings().series("P-1", Instant.EPOCH, Instant.MAX);
            List<String> values = new ArrayList<>();
            kept.forEach(reading -> values.add(Double.toString(reading.temperatureCelsius())));
            assertThat(values).containsExactlyInAnyOrderElementsOf(said);
            Duration lasted = Duration.between(
                    Instant.ofEpochMilli(kept.epochMillis(0)), Instant.ofEpochMilli(kept.epochMillis(kept.size() - 1)));
            assertThat(lasted).isGreaterThan(Duration.ofDays(20));
        }
    }

    private void plugIn() throws IOException {
        long opened = logger.told("Connecting.");
        wire = VirtualWire.plugIn(folder);
        logger.await("the port is open", () -> logger.told("Connecting.") > opened);
        wire.say("\r\n");
    }

    /** Each value once, and each a little warmer than the last. */
    private void say(int lines) throws IOException {
        StringBuilder text = new StringBuilder();
        for (int line = 0; line < lines; line++) {
            String value = String.format(Locale.ROOT, "%.4f", 20 + said.size() * 0.0003);
            said.add(Double.toString(Double.parseDouble(value)));
            text.append(value).append("\r\n");
        }
        wire.say(text.toString());
    }

    private void awaitAllAcknowledged() {
        logger.await("all that was said is acknowledged", () -> count.get() >= said.size());
    }

    private void setClock(Duration by) {
        long set = logger.told(ToldLogger.SET);
        logger.tell(ToldLogger.SET + by);
        logger.await("the clock is set", () -> logger.told(ToldLogger.SET) > set);
    }

    private void suspendAndResume() throws IOException {
        signal("STOP");
        say(LINES / 2);
        LockSupport.parkNanos(Duration.ofMillis(700).toNanos());
        signal("CONT");
    }

    private void signal(String name) {
        try {
            int code = new ProcessBuilder("kill", "-" + name, Long.toString(logger.pid()))
                    .start()
                    .onExit()
                    .join()
                    .exitValue();
            assertThat(code).isZero();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where no disk of its own may be made, this is left to the tests of the store, which are told of a full one. */
    private void fillTheDisk() throws IOException {
        if (disk.isPresent()) {
            awaitAllAcknowledged();
            disk.get().fill();
            say(LINES / 2);
            logger.await("it says so", () -> notKept() == 1);
            LockSupport.parkNanos(Duration.ofMillis(300).toNanos());
            assertThat(count.get())
                    .as("nothing is acknowledged that is not kept")
                    .isLessThan(said.size());
            disk.get().giveRoom();
            logger.await("it goes on", () -> logger.told("Readings are kept again") == 1);
            assertThat(notKept()).as("said once").isEqualTo(1);
        }
    }

    private long notKept() {
        return logger.err().stream().filter(line -> line.endsWith("[ST-6]")).count();
    }

    private Size size() throws IOException {
        long asked = logger.told(ToldLogger.MEMORY);
        logger.tell(ToldLogger.MEMORY);
        logger.await("it says its memory", () -> logger.told(ToldLogger.MEMORY) > asked);
        String answer = logger.err().stream()
                .filter(line -> line.startsWith(ToldLogger.MEMORY))
                .reduce((earlier, later) -> later)
                .orElseThrow();
        Path process = Path.of("/proc", Long.toString(logger.pid()));
        try (Stream<Path> files = Files.list(process.resolve("fd"));
                Stream<Path> threads = Files.list(process.resolve("task"))) {
            return new Size(
                    Long.parseLong(answer.substring(ToldLogger.MEMORY.length() + 1)), threads.count(), files.count());
        }
    }

    /** What the program takes up, after its rubbish was collected. */
    private record Size(long heapBytes, long threads, long files) {}
}
