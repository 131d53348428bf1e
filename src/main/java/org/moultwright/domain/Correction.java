package org.moultwright.domain;

/**
 * What must be added to a probe's indication, a straight line in it, and how sure that is.
 *
 * <p>The correction at an indication x is {@code offset + slope · (x − origin)}. Offset and slope hang
 * together, so that the uncertainty at x needs their covariance (JCGM 100:2008, H.3).
 *
 * @param origin the indication at which the correction is {@code offset}
 * @param offset what to add there
 * @param slope how much more to add for each unit above
 * @param offsetVariance variance of the offset
 * @param slopeVariance variance of the slope
 * @param covariance covariance of both
 * @param commonSd standard uncertainty of what shifts the whole line, such as the reference itself
 */
public record Correction(
        double origin,
        double offset,
        double slope,
        double offsetVariance,
        double slopeVariance,
        double covariance,
        double commonSd) {
    /** A slope further off than this is a fault of the probe, not an error to correct. */
    private static final double STEEPEST = 0.5;

    private static final double ROUNDING = 1 + 1e-9;

    public Correction {
        Require.within("origin", origin, -1000, 1000);
        Require.within("offset", offset, -100, 100);
        Require.within("slope", slope, -STEEPEST, STEEPEST);
        Require.within("offsetVariance", offsetVariance, 0, 1e6);
        Require.within("slopeVariance", slopeVariance, 0, 1e6);
        double most = Math.sqrt(offsetVariance * slopeVariance) * ROUNDING;
        Require.within("covariance", covariance, -most, most);
        Require.within("commonSd", commonSd, 0, 1000);
        // A zero with a sign would not be equal to itself after a store that keeps none.
        origin += 0.0;
        offset += 0.0;
        slope += 0.0;
        covariance += 0.0;
    }

    /** A constant correction. */
    public static Correction constant(double offset, double sd) {
        return new Correction(0, offset, 0, 0, 0, 0, sd);
    }

    /** Whether it leaves every indication as it is. */
    public boolean isNothing() {
        return offset == 0 && slope == 0;
    }

    /** What to add to an indication. */
    public double at(double indicated) {
        return offset + slope * (indicated - origin);
    }

    /** The value behind an indication. */
    public double correct(double indicated) {
        return indicated + at(indicated);
    }

    /** Standard uncertainty of the correction at an indication. */
    public double sdAt(double indicated) {
        double away = indicated - origin;
        double ofLine = offsetVariance + 2 * away * covariance + away * away * slopeVariance;
        return Math.sqrt(Math.max(ofLine, 0) + commonSd * commonSd);
    }

    /** The same line, less sure by a further independent uncertainty. */
    public Correction lessSureBy(double sd) {
        return new Correction(
                origin, offset, slope, offsetVariance, slopeVariance, covariance, Math.hypot(commonSd, sd));
    }
}
