package org.moultwright.ui.chart;

import java.time.Instant;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.ui.theme.Palette;
import org.moultwright.ui.theme.Token;

/**
 * One brood over the calendar: its animals stacked by stage, the lost hatched on top, the potted on the floor;
 * beyond now the expectation, paler, with the 80 % bounds of the living dashed.
 *
 * <p>The day under the pointer is its {@link #readingProperty() reading}, which keys may set as well.
 */
public final class RibbonChart extends ShownCanvas<RibbonChart.Shown> {
    private static final double HEADROOM_PIXELS = 10;
    private static final double FOOT_PIXELS = 16;

    private final ObjectProperty<Optional<Instant>> reading = new SimpleObjectProperty<>(Optional.empty());

    public RibbonChart(ObservableObjectValue<Palette> palette) {
        super(palette);
        reading.addListener((observed, before, now) -> repaint());
        setOnMouseMoved(event -> reading.set(day(event.getX())));
        setOnMouseExited(event -> reading.set(Optional.empty()));
    }

    /** The day being read, marked with a thin line. */
    public ObjectProperty<Optional<Instant>> readingProperty() {
        return reading;
    }

    @Override
    void paint(Pen pen, Shown showing, double width, double height) {
        CalendarAxis axis = showing.calendar().axis(0, width);
        ValueAxis animals = new ValueAxis(
                0, showing.fullScaleAnimals(), pen.pixels(HEADROOM_PIXELS), height - pen.pixels(FOOT_PIXELS));
        showing.calendar().paint(pen, axis, height);
        RibbonPainter painter = new RibbonPainter(pen, axis, animals);
        painter.paint(showing.ribbon());
        pen.vertical(pen.colour(Token.ACCENT), 2, axis.x(showing.calendar().now()), 0, height);
        reading.get().ifPresent(day -> showing.ribbon().known(day).ifPresent(point -> painter.cursor(point, day)));
    }

    private Optional<Instant> day(double x) {
        return shownProperty()
                .get()
                .map(showing -> showing.calendar().axis(0, getWidth()).at(x));
    }

    /**
     * A ribbon on its scale.
     *
     * @param fullScaleAnimals how many animals reach the top, the same for all ribbons of a list
     */
    public record Shown(Ribbon ribbon, Calendar calendar, double fullScaleAnimals) {}
}
