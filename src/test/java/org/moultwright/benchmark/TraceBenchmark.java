package org.moultwright.benchmark;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.StackPane;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.RollUps;
import org.moultwright.settings.Theme;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.ui.chart.ReadingPyramid;
import org.moultwright.ui.chart.Trace;
import org.moultwright.ui.chart.TraceChart;
import org.moultwright.ui.chart.TraceWindow;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.ui.theme.Palette;
import org.testfx.api.FxToolkit;

/**
 * What one frame of a trace costs while the keeper pans, 1600 pixels wide, over readings ten seconds apart: thinning
 * them and painting, and then rendering the picture in software. Arguments: days (365), frames (60).
 */
public final class TraceBenchmark {
    private static final Instant START = Instant.parse("2025-06-01T00:00:00Z");
    private static final Duration BRIDGED = Duration.ofMinutes(30);
    private static final int WIDTH = 1600;
    private static final int HEIGHT = 420;

    private TraceBenchmark() {}

    public static void main(String[] arguments) throws Exception {
        int days = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 365;
        int frames = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 60;
        FxToolkit.registerPrimaryStage();
        ReadingSeries readings = readings(days);
        Instant end = START.plus(Duration.ofDays(days));
        Stopwatch building = new Stopwatch();
        List<ReadingPyramid> built = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            built.clear();
            building.time(() -> built.add(ReadingPyramid.of(RollUps.each(readings), BRIDGED, end)));
        }
        System.out.printf("%,d readings%n", readings.size());
        report("grouping all of them, once a fetch", building);
        for (Duration length : List.of(
                Duration.ofMinutes(1),
                Duration.ofHours(1),
                Duration.ofDays(1),
                Duration.ofDays(7),
                Duration.ofDays(30),
                Duration.ofDays(days - 10L))) {
            pan(built.get(0), length, 0, frames);
        }
        pan(built.get(0), Duration.ofDays(30), Trace.MOST_OTHERS, frames);
        System.exit(0);
    }

    private static void pan(ReadingPyramid readings, Duration length, int others, int frames) {
        Stopwatch painting = new Stopwatch();
        Stopwatch rendering = new Stopwatch();
        TraceChart chart = ToolkitThread.ask(() -> {
            TraceChart made = new TraceChart(new SimpleObjectProperty<>(new Palette(Theme.DARK)));
            StackPane root = new StackPane(made);
            Scene scene = new Scene(root, WIDTH, HEIGHT);
            new Appearance().dress(scene.getStylesheets());
            root.applyCss();
            root.layout();
            return made;
        });
        WritableImage image = new WritableImage(WIDTH, HEIGHT);
        TraceWindow first = new TraceWindow(
                START.plus(Duration.ofDays(1)), START.plus(Duration.ofDays(1)).plus(length));
        for (int frame = -10; frame < frames; frame++) {
            Trace trace = trace(readings, first.moved(0.001 * frame), others);
            boolean counts = frame >= 0;
            ToolkitThread.ask(() -> {
                Stopwatch paint = counts ? painting : new Stopwatch();
                Stopwatch render = counts ? rendering : new Stopwatch();
                paint.time(() -> {
                    chart.traceProperty().set(Optional.of(trace));
                    chart.getParent().layout();
                });
                render.time(() -> chart.snapshot(null, image));
                return chart;
            });
        }
        String name = length.toString() + (others == 0 ? "" : ", four probes");
        report("thinning and painting " + name, painting);
        report("  and rendering it in software " + name, rendering);
    }

    private static Trace trace(ReadingPyramid readings, TraceWindow window, int others) {
        List<Trace.Line> beside = new ArrayList<>();
        for (int i = 0; i < others; i++) {
            beside.add(new Trace.Line("P-" + (i + 2), readings, false));
        }
        return new Trace(
                ZoneOffset.UTC,
                window,
                new Trace.Line("P-1", readings, false),
                beside,
                Optional.of(new Trace.Band(26, 28)),
                BRIDGED,
                List.of(),
                List.of(new Trace.Stretch(window.from(), window.to(), "A1, A2 lived here")),
                List.of());
    }

    private static ReadingSeries readings(int days) {
        ReadingSeries.Builder builder = new ReadingSeries.Builder();
        for (int i = 0; i < days * 8640; i++) {
            double hours = i / 360.0;
            double celsius = Math.round(2700 + 40 * Math.sin(hours / 4) + 9 * Math.sin(hours * 41)) / 100.0;
            builder.add(START.toEpochMilli() + 10_000L * i, celsius, Double.NaN, Quality.GOOD);
        }
        return builder.build();
    }

    private static void report(String what, Stopwatch times) {
        System.out.printf(
                "%-56s median %8.2f ms (%.2f to %.2f)%n",
                what, 1000 * times.median(), 1000 * times.shortest(), 1000 * times.longest());
    }
}
