package org.moultwright.benchmark;

import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import org.moultwright.ui.chart.ReadingPyramid;
import org.moultwright.ui.chart.Trace;
import org.moultwright.ui.chart.TraceChart;
import org.moultwright.ui.chart.TraceWindow;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.TraceReadings;

/** Paints traces on a real canvas of a toolkit without a display, without a graphics card. */
final class TracePaint {
    private static final double HEIGHT_PIXELS = 500;

    private final double width;

    TracePaint(double width) {
        this.width = width;
        System.setProperty("glass.platform", "Monocle");
        System.setProperty("monocle.platform", "Headless");
        System.setProperty("prism.order", "sw");
        System.setProperty("prism.text", "t2k");
        CompletableFuture<Boolean> started = new CompletableFuture<>();
        Platform.startup(() -> started.complete(true));
        started.join();
    }

    /** From the readings to the pixels. */
    double secondsFor(TraceReadings read, TraceWindow window) {
        return CompletableFuture.supplyAsync(() -> painted(read, window), Platform::runLater)
                .join();
    }

    private double painted(TraceReadings read, TraceWindow window) {
        Appearance appearance = new Appearance();
        TraceChart chart = new TraceChart(appearance.paletteProperty());
        Scene scene = new Scene(chart, width, HEIGHT_PIXELS);
        appearance.dress(scene.getStylesheets());
        WritableImage pixels = new WritableImage((int) width, (int) HEIGHT_PIXELS);
        scene.snapshot(pixels);
        long began = System.nanoTime();
        chart.traceProperty()
                .set(Optional.of(new Trace(
                        ZoneOffset.UTC,
                        window,
                        new Trace.Line(
                                "P-1",
                                ReadingPyramid.of(read.rollUps(), bridged(read), window.to()),
                                read.level().isPresent()),
                        List.of(),
                        Optional.of(new Trace.Band(26, 28)),
                        bridged(read),
                        List.of(),
                        List.of(),
                        List.of())));
        scene.snapshot(pixels);
        return (System.nanoTime() - began) / 1e9;
    }

    private static Duration bridged(TraceReadings read) {
        return read.level().map(level -> Duration.ofMillis(level.millis())).orElse(Duration.ofMinutes(30));
    }
}
