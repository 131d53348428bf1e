package org.moultwright.boot.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicReference;
import org.moultwright.device.link.LinkClock;
import org.moultwright.device.link.LinkTiming;
import org.moultwright.device.profile.LineProfiles;
import org.moultwright.device.serial.SerialProbeLinks;
import picocli.CommandLine;

/**
 * The logger as a program, but that its wall clock is set and its memory asked for by lines on standard input, and that
 * a wire that is gone is looked for more often.
 */
public final class ToldLogger {
    public static final String SET = "set ";
    public static final String MEMORY = "memory";

    private static final LinkTiming QUICK =
            new LinkTiming(Duration.ofMinutes(1), Duration.ofMillis(20), Duration.ofMillis(40));

    private ToldLogger() {}

    /** Arguments: a folder for the serial library, and then those of {@code log}. */
    public static void main(String[] arguments) {
        AtomicReference<Duration> ahead = new AtomicReference<>(Duration.ZERO);
        LinkClock clock = new LinkClock(() -> Instant.now().plus(ahead.get()), System::nanoTime);
        Thread told = new Thread(() -> obey(ahead), "told");
        told.setDaemon(true);
        told.start();
        Path folder = Path.of(arguments[0]);
        LogCommand log =
                new LogCommand(clock, () -> new SerialProbeLinks(LineProfiles.bundled(), folder, QUICK, clock));
        String[] rest = Arrays.copyOfRange(arguments, 1, arguments.length);
        int code = new CommandLine(log)
                .setOut(new PrintWriter(System.out, false, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(System.err, true, StandardCharsets.UTF_8))
                .execute(rest);
        System.exit(code);
    }

    private static void obey(AtomicReference<Duration> ahead) {
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.equals(MEMORY)) {
                    System.err.println(MEMORY + " " + usedBytes());
                } else {
                    Duration by = Duration.parse(line.substring(SET.length()));
                    ahead.updateAndGet(before -> before.plus(by));
                    System.err.println(line);
                }
            }
        } catch (IOException over) {
            // Whoever told it is gone.
        }
    }

    private static long usedBytes() {
        System.gc();
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }
}
