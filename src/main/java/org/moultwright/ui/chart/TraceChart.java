package org.moultwright.ui.chart;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.input.KeyEvent;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.ui.theme.Palette;

/**
 * A temperature over time: band aimed at, lowest to highest in each pixel, a line through the middle; gaps are
 * hatched and named, never bridged. The pointer or the arrow keys read any instant; the wheel, a drag or keys ask
 * for another stretch of time.
 */
public final class TraceChart extends ChartCanvas {
    private static final int KEY_STEPS = 96;
    /** Room for the widest number with its unit, as 24.5 °C, beside the ring of focus. */
    private static final double LEFT_EMS = 3.9;

    private static final double RIGHT_EMS = 0.6;
    private static final double ZOOM_STEP = 1.25;
    private static final double PAN_STEP = 0.25;

    /** What a wheel tells for one notch. */
    private static final double NOTCH = 40;

    private final ObjectProperty<Optional<Trace>> trace = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Optional<Instant>> reading = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Optional<TraceWindow>> wanted = new SimpleObjectProperty<>(Optional.empty());
    private double dragX;

    public TraceChart(ObservableObjectValue<Palette> palette) {
        super(palette);
        setFocusTraversable(true);
        trace.addListener((observed, before, now) -> repaint());
        reading.addListener((observed, before, now) -> repaint());
        setOnMousePressed(event -> {
            requestFocus();
            dragX = event.getX();
        });
        setOnMouseDragged(event -> {
            double share = (dragX - event.getX()) / Math.max(1, getWidth() - (LEFT_EMS + RIGHT_EMS) * em());
            dragX = event.getX();
            ask(window -> window.moved(share));
        });
        setOnScroll(event -> {
            double notches = event.getDeltaY() / NOTCH;
            if (event.isShiftDown() || Math.abs(event.getDeltaX()) > Math.abs(event.getDeltaY())) {
                double along = event.getDeltaX() == 0 ? notches : event.getDeltaX() / NOTCH;
                ask(window -> window.moved(-along * PAN_STEP / 2));
            } else {
                Optional<Instant> around = instantAt(event.getX());
                ask(window -> window.zoomed(Math.pow(ZOOM_STEP, -notches), around.orElse(middle(window))));
            }
            event.consume();
        });
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

    /** The stretch of time the keeper asks for, by wheel, drag or key. */
    public ReadOnlyObjectProperty<Optional<TraceWindow>> wantedProperty() {
        return wanted;
    }

    /** Asks for so many times as much time about the instant that is read, or about the middle. */
    public void zoom(double factor) {
        ask(window -> window.zoomed(factor, reading.get().orElse(middle(window))));
    }

    /** The good reading nearest to an instant, if one lies within the longest time that is bridged. */
    public static Optional<Integer> nearest(Trace.Line line, Duration longestBridged, Instant instant) {
        ReadingSeries readings = line.readings().readings();
        int after = readings.indexAtOrAfter(instant);
        Optional<Integer> best = Optional.empty();
        long bestDistance = longestBridged.toMillis() + 1;
        for (int i = Math.max(0, after - 1); i <= Math.min(after, readings.size() - 1); i++) {
            long distance = Math.abs(readings.epochMillis(i) - instant.toEpochMilli());
            if (readings.quality(i) == Quality.GOOD && distance < bestDistance) {
                best = Optional.of(i);
                bestDistance = distance;
            }
        }
        return best;
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
        if (event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        switch (event.getCode()) {
            case LEFT, KP_LEFT -> move(event.isShiftDown(), -1);
            case RIGHT, KP_RIGHT -> move(event.isShiftDown(), 1);
            case PAGE_UP -> ask(window -> window.moved(-1));
            case PAGE_DOWN -> ask(window -> window.moved(1));
            case HOME -> step(-KEY_STEPS);
            case END -> step(KEY_STEPS);
            case UP, KP_UP, PLUS, ADD, EQUALS -> zoom(1 / ZOOM_STEP);
            case DOWN, KP_DOWN, MINUS, SUBTRACT -> zoom(ZOOM_STEP);
            default -> {
                return;
            }
        }
        event.consume();
    }

    private void move(boolean isWindow, int direction) {
        if (isWindow) {
            ask(window -> window.moved(direction * PAN_STEP));
        } else {
            step(direction);
        }
    }

    private void step(int steps) {
        trace.get().ifPresent(shown -> reading.set(Optional.of(stepped(shown, steps))));
    }

    private void ask(UnaryOperator<TraceWindow> change) {
        trace.get().ifPresent(shown -> wanted.set(Optional.of(change.apply(shown.window()))));
    }

    private static Instant middle(TraceWindow window) {
        return window.from().plus(window.length().dividedBy(2));
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
