package org.moultwright.ui.chart;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.value.ObservableObjectValue;
import javafx.collections.FXCollections;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import org.moultwright.language.Texts;
import org.moultwright.ui.theme.Palette;
import org.moultwright.ui.theme.Token;

/** The share of animals alive over the days since their sacs were opened: a stair for each brood, with its limits. */
public final class SurvivalChart extends ChartCanvas {
    private static final List<Look> LOOKS = List.of(
            new Look(Token.ACCENT, 0), new Look(Token.WARN, 7), new Look(Token.BAD, 3), new Look(Token.INK, 12));

    private final ObservableList<Curve> curves = FXCollections.observableArrayList();

    public SurvivalChart(ObservableObjectValue<Palette> palette) {
        super(palette);
        getStyleClass().add("survival-chart");
        curves.addListener((ListChangeListener<Curve>) change -> repaint());
    }

    /** The broods shown, the one looked at leading; at most four. */
    public ObservableList<Curve> curves() {
        return curves;
    }

    @Override
    void paint(Pen pen, double width, double height) {
        if (curves.isEmpty()) {
            return;
        }
        double days = curves.stream().mapToDouble(Curve::days).max().orElse(1);
        double lowest = curves.stream()
                .flatMap(curve -> curve.steps().stream())
                .mapToDouble(Step::lower)
                .min()
                .orElse(0);
        double floor = Math.max(0, Math.min(80, Math.floor(lowest * 10) * 10));
        Plane plane = new Plane(pen, width, height, new double[] {0, Math.max(1, days)}, new double[] {floor, 100});
        plane.grid(Texts.say("days since the sac was opened"), Texts.say("% alive"));
        for (int i = 0; i < Math.min(curves.size(), LOOKS.size()); i++) {
            Curve curve = curves.get(i);
            if (i == 0) {
                plane.stairGround(xs(curve), ys(curve, false), ys(curve, true));
            }
        }
        List<Token> colours = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (int i = Math.min(curves.size(), LOOKS.size()) - 1; i >= 0; i--) {
            Curve curve = curves.get(i);
            plane.stair(LOOKS.get(i).token(), LOOKS.get(i).dash(), xs(curve), middle(curve));
            colours.add(LOOKS.get(i).token());
            names.add(curve.code());
        }
        plane.stairNames(colours, names);
    }

    private static double[] xs(Curve curve) {
        int steps = curve.steps().size();
        double[] xs = new double[steps + 1];
        for (int i = 0; i < steps; i++) {
            xs[i] = curve.steps().get(i).days();
        }
        xs[steps] = Math.max(curve.days(), xs[Math.max(0, steps - 1)]);
        return xs;
    }

    private static double[] middle(Curve curve) {
        return curve.steps().stream().mapToDouble(step -> 100 * step.survival()).toArray();
    }

    private static double[] ys(Curve curve, boolean isUpper) {
        return curve.steps().stream()
                .mapToDouble(step -> 100 * (isUpper ? step.upper() : step.lower()))
                .toArray();
    }

    /** How a brood's stair is told from the others. */
    private record Look(Token token, double dash) {}

    /**
     * One brood.
     *
     * @param days how long it was watched
     */
    public record Curve(String code, double days, List<Step> steps) {
        public Curve {
            steps = List.copyOf(steps);
        }
    }

    /** From this day on, until the next step: the share alive and its limits. */
    public record Step(double days, double survival, double lower, double upper) {}
}
