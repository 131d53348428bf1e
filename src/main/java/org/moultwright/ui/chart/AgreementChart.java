package org.moultwright.ui.chart;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableObjectValue;
import org.moultwright.compute.agreement.LimitsOfAgreement;
import org.moultwright.language.Degrees;
import org.moultwright.language.Scale;
import org.moultwright.language.Texts;
import org.moultwright.ui.theme.Palette;
import org.moultwright.ui.theme.Token;

/**
 * Differences of two instruments against their mean (Bland &amp; Altman 1986): every pair, the mean difference,
 * and the limits between which 95 % of differences lie, each limit with its 95 % interval as a soft ground.
 */
public final class AgreementChart extends ChartCanvas {
    private static final double CONFIDENCE = 0.95;

    private final ObjectProperty<Optional<Shown>> shown = new SimpleObjectProperty<>(Optional.empty());

    public AgreementChart(ObservableObjectValue<Palette> palette) {
        super(palette);
        shown.addListener((observed, before, now) -> repaint());
        setAccessibleText(Texts.say("display less probe against their mean, with limits of agreement"));
    }

    /**
     * What is shown.
     *
     * @param limits empty while there are too few pairs
     */
    public record Shown(List<Pair> pairs, Optional<LimitsOfAgreement> limits) {
        public Shown {
            pairs = List.copyOf(pairs);
        }

        private double[] across() {
            double low = pairs.stream().mapToDouble(Pair::mean).min().orElse(27);
            double high = pairs.stream().mapToDouble(Pair::mean).max().orElse(27);
            return new double[] {low - 0.5, high + 0.5};
        }

        private double[] up() {
            DoubleStream ends = limits.stream()
                    .flatMapToDouble(found -> Arrays.stream(new double[] {
                        found.lowerInterval(CONFIDENCE).from(),
                        found.upperInterval(CONFIDENCE).to()
                    }));
            double[] all = DoubleStream.concat(
                            DoubleStream.concat(ends, pairs.stream().mapToDouble(Pair::difference)), DoubleStream.of(0))
                    .sorted()
                    .toArray();
            double room = Math.max(0.1 * (all[all.length - 1] - all[0]), 0.2);
            return new double[] {all[0] - room, all[all.length - 1] + room};
        }
    }

    /** One comparison, in °C. */
    public record Pair(double mean, double difference) {}

    public ObjectProperty<Optional<Shown>> shownProperty() {
        return shown;
    }

    @Override
    void paint(Pen pen, double width, double height) {
        shown.get().filter(what -> !what.pairs().isEmpty()).ifPresent(what -> {
            Plane plane = new Plane(pen, width, height, what.across(), what.up(), Scale.TEMPERATURE, Scale.APART);
            what.limits().ifPresent(limits -> {
                plane.ground(
                        Token.ACCENT_SOFT,
                        limits.lowerInterval(CONFIDENCE).from(),
                        limits.lowerInterval(CONFIDENCE).to());
                plane.ground(
                        Token.ACCENT_SOFT,
                        limits.upperInterval(CONFIDENCE).from(),
                        limits.upperInterval(CONFIDENCE).to());
            });
            plane.grid(
                    Texts.say("mean of display and probe, {0}", Degrees.symbol()),
                    Texts.say("display less probe, {0}", Degrees.symbol()));
            what.limits().ifPresent(limits -> {
                plane.level(limits.upper(), 6, Texts.say("upper limit {0}", apart(limits.upper())));
                plane.level(limits.bias(), 0, Texts.say("mean {0}", apart(limits.bias())));
                plane.level(limits.lower(), 6, Texts.say("lower limit {0}", apart(limits.lower())));
            });
            what.pairs().forEach(pair -> plane.point(pair.mean(), pair.difference(), 0));
        });
    }

    private static String apart(double celsiusApart) {
        return Degrees.signedApart(celsiusApart, 2);
    }
}
