package org.moultwright.ui.chart;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.input.KeyEvent;
import org.moultwright.domain.RollUp;
import org.moultwright.ui.theme.Palette;

/**
 * A temperature over time: band aimed at, lowest to highest in each pixel, a line through the middle; gaps are
 * hatched and named, never bridged. The pointer or the arrow keys read any instant.
 */
public final class TraceChart extends ChartCanvas {
    private static final int KEY_STEPS = 96;
    private static final double LEFT_EMS = 2.8;
    private static final double RIGHT_EMS = 0.6;

    private final ObjectProperty<Optional<Trace>> trace = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Optional<Instant>> reading = new SimpleObjectProperty<>(Optional.empty());

    public TraceChart(ObservableObjectValue<Palette> palette) {
        super(palette);
        setFocusTraversable(true);
        trace.addListener((observed, before, now) -> repaint());
        reading.addListener((observed, before, now) -> repaint());
        setOnMousePressed(event -> requestFocus());
        setOnMouseMoved(event -> reading.set(instantAt(event.getX())));
        setOnMouseExited(event -> reading.set(Optional.empty()));
        setOnKeyPressed(this::pressed);
    }

    public ObjectProperty<Optional<Trace>> traceProperty() {
        return trace;
    }

    /** The instant being read, marked with a thin line. */
    public ObjectProperty<Optional<Instant>> readingProperty() {
        return reading;
    }

    /** What has good readings nearest to an instant, if it lies within the longest time that is bridged. */
    public static Optional<RollUp> nearest(Trace trace, Instant instant) {
        long millis = instant.toEpochMilli();
        return trace.rollUps().stream()
                .filter(rollUp -> rollUp.good() > 0)
                .min(Comparator.comparingLong(rollUp -> distance(rollUp, millis)))
                .filter(rollUp ->
                        distance(rollUp, millis) <= trace.longestBridged().toMillis());
    }

    /** How far an instant lies from the nearest reading of a roll-up; none if it lies among them. */
    private static long distance(RollUp rollUp, long millis) {
        return Math.max(0, Math.max(rollUp.firstMillis() - millis, millis - rollUp.lastMillis()));
    }

    @Override
    void paint(Pen pen, double width, double height) {
        trace.get().ifPresent(shown -> {
            TracePainter painter = new TracePainter(pen, shown, axis(shown), height);
            painter.paint();
            reading.get().ifPresent(painter::cursor);
        });
    }

    private void pressed(KeyEvent event) {
        int steps =
                switch (event.getCode()) {
                    case LEFT, KP_LEFT -> -1;
                    case RIGHT, KP_RIGHT -> 1;
                    case HOME -> -KEY_STEPS;
                    case END -> KEY_STEPS;
                    default -> 0;
                };
        if (steps != 0) {
            trace.get().ifPresent(shown -> reading.set(Optional.of(stepped(shown, steps))));
            event.consume();
        }
    }

    private Instant stepped(Trace shown, int steps) {
        Duration step = Duration.between(shown.from(), shown.to()).dividedBy(KEY_STEPS);
        Instant start = reading.get().orElse(steps < 0 ? shown.to() : shown.from());
        Instant wanted = start.plus(step.multipliedBy(steps));
        if (wanted.isBefore(shown.from())) {
            return shown.from();
        }
        return wanted.isAfter(shown.to()) ? shown.to() : wanted;
    }

    private Optional<Instant> instantAt(double x) {
        return trace.get()
                .map(this::axis)
                .filter(axis -> x >= axis.left() && x <= axis.right())
                .map(axis -> axis.at(x));
    }

    private CalendarAxis axis(Trace shown) {
        double left = LEFT_EMS * em();
        double right = Math.max(left + 1, getWidth() - RIGHT_EMS * em());
        return new CalendarAxis(shown.zone(), shown.from(), shown.to(), left, right);
    }
}
