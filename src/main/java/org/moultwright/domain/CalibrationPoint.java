package org.moultwright.domain;

/**
 * What a probe indicated where the true value was known, in °C or % by what is calibrated.
 *
 * @param reference the true value
 * @param referenceSd its standard uncertainty
 * @param indicated what the probe said
 * @param indicatedSd standard uncertainty of that: its last digit and its unrest
 * @param source where the true value comes from, such as the table and salt
 */
public record CalibrationPoint(
        double reference, double referenceSd, double indicated, double indicatedSd, String source) {
    /** No probe of a brood room is calibrated further out. */
    private static final double FARTHEST = 200;

    public CalibrationPoint {
        Require.within("reference", reference, -FARTHEST, FARTHEST);
        Require.within("referenceSd", referenceSd, 0, FARTHEST);
        Require.within("indicated", indicated, -FARTHEST, FARTHEST);
        Require.within("indicatedSd", indicatedSd, 0, FARTHEST);
        Require.text("source", source);
    }

    /** What must be added to the indication. */
    public double correction() {
        return reference - indicated;
    }
}
