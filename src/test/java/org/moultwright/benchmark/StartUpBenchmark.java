package org.moultwright.benchmark;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.moultwright.boot.EmptyWindow;
import org.moultwright.boot.TimedWorkbench;

/**
 * How long a keeper waits from the start of the program until the round of the demo room can be used, against
 * the start of an empty window of the same toolkit. Each start is a process of its own on a display in memory,
 * painted without a graphics card; one of each before the first that counts.
 *
 * <p>Needs Xvfb. Argument: starts of each (7).
 */
public final class StartUpBenchmark {
    private static final String DISPLAY = ":97";
    private static final Path DISPLAY_SOCKET = Path.of("/tmp/.X11-unix/X97");

    private StartUpBenchmark() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        int starts = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 7;
        Path store = Files.createTempDirectory("start").resolve("demo.store");
        Process display = new ProcessBuilder("Xvfb", DISPLAY, "-screen", "0", "1280x800x24")
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            while (display.isAlive() && Files.notExists(DISPLAY_SOCKET)) {
                Thread.onSpinWait();
            }
            measure(starts, store);
        } finally {
            display.destroy();
        }
    }

    private static void measure(int starts, Path store) throws IOException, InterruptedException {
        System.out.printf("the very first start, the demo room taken in: %.2f s%n", secondsOfDesk(store));
        secondsOfEmptyWindow();
        Stopwatch empty = new Stopwatch();
        Stopwatch desk = new Stopwatch();
        for (int start = 0; start < starts; start++) {
            empty.add(secondsOfEmptyWindow());
            desk.add(secondsOfDesk(store));
        }
        report("an empty window shown", empty);
        report("the round of the demo room usable", desk);
        System.out.printf("the desk takes %.2f times as long%n", desk.median() / empty.median());
    }

    private static double secondsOfEmptyWindow() throws IOException, InterruptedException {
        return secondsUntil(EmptyWindow.SHOWN, EmptyWindow.class.getName());
    }

    private static double secondsOfDesk(Path store) throws IOException, InterruptedException {
        return secondsUntil(TimedWorkbench.USABLE, TimedWorkbench.class.getName(), "--store", store.toString());
    }

    private static double secondsUntil(String words, String... program) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                ProcessHandle.current().info().command().orElse("java"),
                "-Dprism.order=sw",
                "-cp",
                System.getProperty("java.class.path")));
        command.addAll(List.of(program));
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("DISPLAY", DISPLAY);
        long startNanos = System.nanoTime();
        Process started = builder.start();
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(started.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = said.readLine(); !words.equals(line); line = said.readLine()) {
                if (line == null) {
                    throw new IllegalStateException(program[0] + " ended before it was '" + words + "'");
                }
            }
            return (System.nanoTime() - startNanos) / 1e9;
        } finally {
            started.destroy();
            started.waitFor();
        }
    }

    private static void report(String what, Stopwatch times) {
        System.out.printf(
                "%-36s median %5.2f s (%.2f to %.2f)%n", what, times.median(), times.shortest(), times.longest());
    }
}
