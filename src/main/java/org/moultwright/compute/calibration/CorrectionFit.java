package org.moultwright.compute.calibration;

import java.util.List;
import org.moultwright.domain.CalibrationMethod;
import org.moultwright.domain.CalibrationPoint;
import org.moultwright.domain.Correction;
import org.moultwright.domain.Quantity;
import org.moultwright.domain.Require;

/**
 * Finds the correction a probe needs from the points it was held against.
 *
 * <p>One point tells an offset and nothing of the slope, which stays unsure; two tell both; three and more
 * are fitted by least squares, whose scatter tells how sure. What the references share shifts the whole line.
 */
public final class CorrectionFit {
    /**
     * How unsure the slope of an untried temperature probe is, per K: about 0.1 K at 27 °C after an ice
     * point. An assumption of ours, near what sheets of cheap digital probes allow.
     */
    static final double UNTRIED_SLOPE_SD_CELSIUS = 0.004;

    /** The same of a humidity probe, per %: 2 % at 40 % away from the salt. An assumption of ours. */
    static final double UNTRIED_SLOPE_SD_HUMIDITY = 0.05;

    /** Nearer points would tell the slope worse than not trying. */
    private static final double NEAREST_CELSIUS = 4;

    private static final double NEAREST_HUMIDITY = 10;

    private CorrectionFit() {}

    /**
     * The correction through points, in any order.
     *
     * @throws IllegalArgumentException if the method does not take so many points, or they lie too near
     *     together to tell a slope
     */
    public static Correction through(CalibrationMethod method, List<CalibrationPoint> points) {
        Require.that(
                method.takes(points.size()),
                "the method " + method.key() + " does not work with " + points.size() + " points");
        boolean isTemperature = method.quantity() == Quantity.TEMPERATURE;
        if (points.size() == 1) {
            return onePoint(points.get(0), isTemperature ? UNTRIED_SLOPE_SD_CELSIUS : UNTRIED_SLOPE_SD_HUMIDITY);
        }
        double apart = highest(points) - lowest(points);
        double nearest = isTemperature ? NEAREST_CELSIUS : NEAREST_HUMIDITY;
        Require.that(apart >= nearest, "points are %s apart but must be at least %s".formatted(apart, nearest));
        return points.size() == 2 ? twoPoints(points.get(0), points.get(1)) : manyPoints(points);
    }

    private static Correction onePoint(CalibrationPoint point, double slopeSd) {
        return new Correction(point.indicated(), point.correction(), 0, variance(point), slopeSd * slopeSd, 0, 0);
    }

    /** The law of propagation over the line through both, about their middle (JCGM 100:2008, 5.1). */
    private static Correction twoPoints(CalibrationPoint one, CalibrationPoint other) {
        double apart = other.indicated() - one.indicated();
        double sum = variance(one) + variance(other);
        return new Correction(
                (one.indicated() + other.indicated()) / 2,
                (one.correction() + other.correction()) / 2,
                (other.correction() - one.correction()) / apart,
                sum / 4,
                sum / (apart * apart),
                (variance(other) - variance(one)) / (2 * apart),
                0);
    }

    private static Correction manyPoints(List<CalibrationPoint> points) {
        double[] indicated =
                points.stream().mapToDouble(CalibrationPoint::indicated).toArray();
        double[] corrections =
                points.stream().mapToDouble(CalibrationPoint::correction).toArray();
        double middle = points.stream()
                .mapToDouble(CalibrationPoint::indicated)
                .average()
                .orElseThrow();
        double leastScatter = Math.sqrt(points.stream()
                .mapToDouble(point -> point.indicatedSd() * point.indicatedSd())
                .average()
                .orElseThrow());
        StraightLine line = StraightLine.through(indicated, corrections, middle, leastScatter);
        double referenceSd =
                points.stream().mapToDouble(CalibrationPoint::referenceSd).max().orElseThrow();
        return new Correction(
                line.origin(),
                line.intercept(),
                line.slope(),
                line.interceptVariance(),
                line.slopeVariance(),
                line.covariance(),
                referenceSd);
    }

    private static double variance(CalibrationPoint point) {
        return point.referenceSd() * point.referenceSd() + point.indicatedSd() * point.indicatedSd();
    }

    private static double lowest(List<CalibrationPoint> points) {
        return points.stream().mapToDouble(CalibrationPoint::indicated).min().orElseThrow();
    }

    private static double highest(List<CalibrationPoint> points) {
        return points.stream().mapToDouble(CalibrationPoint::indicated).max().orElseThrow();
    }
}
