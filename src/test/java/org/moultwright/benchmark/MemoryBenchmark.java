package org.moultwright.benchmark;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.application.Platform;
import org.moultwright.boot.DeskDay;

/**
 * What a desk holds on to while it is used: hour by hour readings each ten seconds, the room read again and every
 * screen drawn, and a round of all trays each evening. Prints, for each day, the heap in use after it was cleared and,
 * on Linux, the memory the whole process has of the machine.
 *
 * <p>Run it as the program's script starts a desk: with its settings {@code MALLOC_…} and {@code GDK_GL}, and
 * {@code @packaging/bin/java.options}. Needs a display or a headless toolkit. Argument: days (3).
 */
public final class MemoryBenchmark {
    private static final int HOURS = 24;
    private static final Path STATUS = Path.of("/proc/self/status");

    private MemoryBenchmark() {}

    public static void main(String[] arguments) throws IOException {
        int days = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 3;
        Platform.startup(() -> {});
        try (DeskDay desk = new DeskDay(Files.createTempDirectory("memory"))) {
            for (int day = 1; day <= days; day++) {
                for (int hour = 0; hour < HOURS; hour++) {
                    desk.liveAnHour();
                }
                desk.doTheRound();
                System.out.printf(
                        "day %d: process %s, heap in use %.0f MB%n", day, processMemory(), heapInUseMegabytes());
            }
        }
        Platform.exit();
    }

    private static double heapInUseMegabytes() {
        System.gc();
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1e6;
    }

    private static String processMemory() throws IOException {
        if (Files.notExists(STATUS)) {
            return "not told by this machine";
        }
        return Files.readAllLines(STATUS).stream()
                .filter(line -> line.startsWith("VmRSS:") || line.startsWith("VmHWM:"))
                .map(line -> line.replaceAll("\\s+", " "))
                .reduce((most, now) -> most + ", " + now)
                .orElse("not told by this machine");
    }
}
