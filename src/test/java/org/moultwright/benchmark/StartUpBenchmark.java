package org.moultwright.benchmark;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.moultwright.boot.EmptyWindow;
import org.moultwright.boot.TimedWorkbench;

/**
 * How long a keeper waits from the start of the program until the trays of the demo room can be counted, and until
 * their dates are there, against the start of an empty window of the same toolkit. Each start is a process of its
 * own on a display in memory, painted without a graphics card; one of each before the first that counts. The desk
 * is started as the program's script does, with the classes the start before left ready and what the toolkit needs of
 * the machine beside its libraries; the empty window as plain Java, which is the baseline, and with its classes ready.
 *
 * <p>Needs Xvfb, and the classes packed in jars, for none are kept ready of folders: this packs its own. Argument:
 * starts of each (7).
 */
public final class StartUpBenchmark {
    private static final String DISPLAY = ":97";
    private static final Path DISPLAY_SOCKET = Path.of("/tmp/.X11-unix/X97");

    /** What the script starts a desk with, besides. */
    private static final String OPTIONS = "@" + Path.of("packaging", "bin", "java.options");

    /** Where a machine says whether it lends memory in large pages. */
    private static final Path LENDING = Path.of("/sys/kernel/mm/transparent_hugepage/enabled");

    /** What the script has the desk's libraries know. */
    private static final Map<String, String> SURROUNDINGS = Map.of(
            "MALLOC_ARENA_MAX", "2",
            "MALLOC_TRIM_THRESHOLD_", "131072",
            "MALLOC_MMAP_THRESHOLD_", "131072",
            "GDK_GL", "disable");

    /** Changes nothing. */
    private static final String PLAIN = "-Xshare:auto";

    private final Path folder;
    private final String classPath;
    private final String laidOut;

    private StartUpBenchmark(Path folder) throws IOException {
        this.folder = folder;
        this.classPath = PackedPath.packed(folder);
        this.laidOut = PackedPath.laidOut(classPath, folder);
    }

    public static void main(String[] arguments) throws IOException, InterruptedException {
        int starts = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 7;
        Path folder = Files.createTempDirectory("start");
        Process display = new ProcessBuilder("Xvfb", DISPLAY, "-screen", "0", "1280x800x24")
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            while (display.isAlive() && Files.notExists(DISPLAY_SOCKET)) {
                Thread.onSpinWait();
            }
            new StartUpBenchmark(folder).measure(starts);
        } finally {
            display.destroy();
        }
    }

    private void measure(int starts) throws IOException, InterruptedException {
        Map<String, Double> first = desk(leavesReady("desk"));
        System.out.printf("the very first start, the demo room taken in: %.2f s%n", first.get(TimedWorkbench.USABLE));
        emptyWindow(leavesReady("empty"));
        Stopwatch plain = new Stopwatch();
        Stopwatch empty = new Stopwatch();
        Stopwatch deskPlain = new Stopwatch();
        Stopwatch usable = new Stopwatch();
        Stopwatch dated = new Stopwatch();
        for (int start = 0; start < starts; start++) {
            plain.add(emptyWindow(PLAIN));
            empty.add(emptyWindow(ready("empty")));
            deskPlain.add(desk(PLAIN).get(TimedWorkbench.USABLE));
            Map<String, Double> desk = desk(ready("desk"));
            usable.add(desk.get(TimedWorkbench.USABLE));
            dated.add(desk.get(TimedWorkbench.DATED));
        }
        report("an empty window, plain Java", plain);
        report("an empty window, classes ready", empty);
        report("trays can be counted, plain Java", deskPlain);
        report("trays can be counted, classes ready", usable);
        report("all dates there, classes ready", dated);
        System.out.printf(
                "trays can be counted after %.2f times an empty window, %.2f times with its classes ready%n",
                usable.median() / plain.median(), usable.median() / empty.median());
    }

    private double emptyWindow(String classes) throws IOException, InterruptedException {
        return start(
                        List.of(EmptyWindow.SHOWN),
                        Map.of(),
                        classPath,
                        classes,
                        Process::destroy,
                        EmptyWindow.class.getName())
                .get(EmptyWindow.SHOWN);
    }

    /** As the script asks for it. */
    private static String pages() throws IOException {
        boolean lends = Files.isReadable(LENDING) && !Files.readString(LENDING).contains("[never]");
        return "-XX:" + (lends ? "+" : "-") + "UseTransparentHugePages";
    }

    private Map<String, Double> desk(String classes) throws IOException, InterruptedException {
        return start(
                List.of(TimedWorkbench.USABLE, TimedWorkbench.DATED),
                SURROUNDINGS,
                laidOut,
                classes,
                StartUpBenchmark::closeWindow,
                OPTIONS,
                pages(),
                TimedWorkbench.class.getName(),
                "--demo",
                "--store",
                folder.resolve("demo.store").toString());
    }

    /** Seconds from the start until each of these words was said; then the process is ended. */
    private Map<String, Double> start(
            List<String> words,
            Map<String, String> surroundings,
            String path,
            String classes,
            Consumer<Process> end,
            String... program)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                ProcessHandle.current().info().command().orElse("java"),
                "-Dprism.order=sw",
                "-Xlog:cds=off",
                "-Xlog:cds+dynamic=off",
                classes,
                "-cp",
                path));
        command.addAll(List.of(program));
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().putAll(surroundings);
        builder.environment().put("DISPLAY", DISPLAY);
        Map<String, Double> seconds = new HashMap<>();
        long startNanos = System.nanoTime();
        Process started = builder.start();
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(started.getInputStream(), StandardCharsets.UTF_8))) {
            while (!seconds.keySet().containsAll(words)) {
                String line = said.readLine();
                if (line == null) {
                    throw new IllegalStateException(String.join(" ", program) + " ended after " + seconds.keySet());
                }
                seconds.put(line, (System.nanoTime() - startNanos) / 1e9);
            }
            return seconds;
        } finally {
            end.accept(started);
            started.waitFor();
        }
    }

    /** As a keeper does: a store that was not closed takes longer to open the next time. */
    private static void closeWindow(Process desk) {
        try {
            desk.getOutputStream().close();
        } catch (IOException ended) {
            throw new UncheckedIOException(ended);
        }
    }

    private String leavesReady(String what) {
        return "-XX:ArchiveClassesAtExit=" + folder.resolve(what + ".jsa");
    }

    private String ready(String what) {
        return "-XX:SharedArchiveFile=" + folder.resolve(what + ".jsa");
    }

    private static void report(String what, Stopwatch times) {
        System.out.printf(
                "%-36s median %5.2f s (%.2f to %.2f)%n", what, times.median(), times.shortest(), times.longest());
    }
}
