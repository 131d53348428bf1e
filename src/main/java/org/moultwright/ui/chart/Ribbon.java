package org.moultwright.ui.chart;

import java.time.Instant;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.moultwright.domain.Stage;

/**
 * What a ribbon shows of one brood.
 *
 * @param laid when the sac was laid, the middle of what is known
 * @param pulled when it was taken from its mother
 * @param past what was known, in order; the last point is now
 * @param expected what is expected, in order, its first point now; empty where nothing is
 * @param checks when somebody looked
 * @param inside what most in a sac nobody has opened are thought to be, in order; empty once it is opened
 */
public record Ribbon(
        Optional<Instant> laid,
        Optional<Instant> pulled,
        List<Point> past,
        List<Point> expected,
        List<Instant> checks,
        List<Inside> inside) {
    public static final Ribbon EMPTY =
            new Ribbon(Optional.empty(), Optional.empty(), List.of(), List.of(), List.of(), List.of());

    public Ribbon {
        past = List.copyOf(past);
        expected = List.copyOf(expected);
        checks = List.copyOf(checks);
        inside = List.copyOf(inside);
    }

    /** The most animals it ever holds, the lost among them. */
    public double mostAnimals() {
        return past.stream().mapToDouble(Point::all).max().orElse(0);
    }

    /** What most in an unopened sac are thought to be at an instant. */
    public Optional<Stage> thoughtInside(Instant instant) {
        return inside.stream()
                .filter(part -> !part.from().isAfter(instant))
                .reduce((first, second) -> second)
                .map(Inside::stage);
    }

    /** A stage most in an unopened sac are thought to be in from an instant on. */
    public record Inside(Stage stage, Instant from) {}

    /** The last point at or before an instant, which is what was known then; or the nearest day expected. */
    public Optional<Point> known(Instant instant) {
        List<Point> points =
                expected.isEmpty() || instant.isBefore(expected.get(0).at()) ? past : expected;
        return points.stream().filter(point -> !point.at().isAfter(instant)).reduce((first, second) -> second);
    }

    /** What was written by the end of a day, which lies between two instants; what is expected by then of days to come. */
    Optional<Point> atEnd(Instant from, Instant to) {
        boolean isToCome = !expected.isEmpty()
                && past.stream().noneMatch(point -> !point.at().isBefore(from));
        return (isToCome ? expected : past)
                .stream().filter(point -> point.at().isBefore(to)).reduce((first, second) -> second);
    }

    /**
     * A brood at one instant.
     *
     * @param living animals in trays by stage
     * @param potted animals potted or handed over
     * @param lost animals dead, infertile or missing
     * @param aliveLow lower 80 % bound of all living, NaN where it is known
     * @param aliveHigh upper bound
     */
    public record Point(
            Instant at, Map<Stage, Double> living, double potted, double lost, double aliveLow, double aliveHigh) {
        public Point {
            EnumMap<Stage, Double> ordered = new EnumMap<>(Stage.class);
            ordered.putAll(living);
            living = Collections.unmodifiableMap(ordered);
        }

        public boolean isExpected() {
            return !Double.isNaN(aliveLow);
        }

        /** Animals in trays. */
        public double alive() {
            return living.values().stream().mapToDouble(Double::doubleValue).sum();
        }

        public double all() {
            return alive() + potted + lost;
        }
    }
}
