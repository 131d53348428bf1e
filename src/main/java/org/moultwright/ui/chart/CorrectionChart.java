package org.moultwright.ui.chart;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.domain.CalibrationPoint;
import org.moultwright.domain.Correction;
import org.moultwright.domain.Quantity;
import org.moultwright.language.Scale;
import org.moultwright.language.Texts;
import org.moultwright.ui.theme.Palette;

/**
 * What a probe must be corrected by: each point with its standard uncertainty, the line found through them, and
 * twice the line's standard uncertainty about it.
 */
public final class CorrectionChart extends ChartCanvas {
    private static final double COVERAGE = 2;

    private final ObjectProperty<Optional<Shown>> shown = new SimpleObjectProperty<>(Optional.empty());

    public CorrectionChart(ObservableObjectValue<Palette> palette) {
        super(palette);
        shown.addListener((observed, before, now) -> repaint());
        setAccessibleText(Texts.say("what must be added to the probe, point by point, and the line through them"));
    }

    /**
     * What is shown.
     *
     * @param unit of the quantity, as it is shown
     * @param usual where the quantity usually lies; it is always in the picture
     */
    public record Shown(
            Quantity quantity, String unit, double usual, List<CalibrationPoint> points, Correction correction) {
        public Shown {
            points = List.copyOf(points);
        }

        private Scale scale(Scale ofTemperatures) {
            return quantity == Quantity.TEMPERATURE ? ofTemperatures : Scale.PLAIN;
        }

        private double[] across() {
            double low = Math.min(
                    usual,
                    points.stream()
                            .mapToDouble(CalibrationPoint::indicated)
                            .min()
                            .orElse(usual));
            double high = Math.max(
                    usual,
                    points.stream()
                            .mapToDouble(CalibrationPoint::indicated)
                            .max()
                            .orElse(usual));
            double room = Math.max(0.08 * (high - low), 1);
            return new double[] {low - room, high + room};
        }

        private double[] up(double[] across) {
            double low = 0;
            double high = 0;
            for (double x : across) {
                double reach = COVERAGE * correction.sdAt(x);
                low = Math.min(low, correction.at(x) - reach);
                high = Math.max(high, correction.at(x) + reach);
            }
            for (CalibrationPoint point : points) {
                low = Math.min(low, point.correction() - sd(point));
                high = Math.max(high, point.correction() + sd(point));
            }
            double room = Math.max(0.1 * (high - low), 0.05);
            return new double[] {low - room, high + room};
        }

        private static double sd(CalibrationPoint point) {
            return Math.hypot(point.referenceSd(), point.indicatedSd());
        }
    }

    public ObjectProperty<Optional<Shown>> shownProperty() {
        return shown;
    }

    @Override
    void paint(Pen pen, double width, double height) {
        shown.get().ifPresent(what -> {
            double[] across = what.across();
            Plane plane = new Plane(
                    pen,
                    width,
                    height,
                    across,
                    what.up(across),
                    what.scale(Scale.TEMPERATURE),
                    what.scale(Scale.APART));
            plane.curve(what.correction()::at, x -> COVERAGE * what.correction().sdAt(x));
            plane.grid(Texts.say("probe shows, {0}", what.unit()), Texts.say("to be added, {0}", what.unit()));
            plane.level(0, 3, Texts.say("nothing to add"));
            what.points().forEach(point -> plane.point(point.indicated(), point.correction(), Shown.sd(point)));
        });
    }
}
