package org.moultwright.compute.psychro;

import org.moultwright.domain.Require;

/**
 * A reading of an incubator's display beside that of a probe at the same time.
 *
 * @param displayCelsius what the display showed
 * @param probeCelsius what the probe measured, its offset taken off
 * @param uncertainty of the comparison
 */
public record DisplayCheck(double displayCelsius, double probeCelsius, Uncertainty uncertainty) {

    /** What the comparison says of the display. */
    public enum Verdict {
        AGREES,
        DISAGREES,
        CANNOT_TELL
    }

    /**
     * Standard uncertainties in K of the probe, of the display's last digit and of probe and display being in
     * two places.
     */
    public record Uncertainty(double probe, double resolution, double position) {
        /** The combined uncertainty, widened by a coverage factor. */
        public double expanded(double coverageFactor) {
            return coverageFactor * Math.sqrt(probe * probe + resolution * resolution + position * position);
        }
    }

    /** The display less the probe, in K. */
    public double difference() {
        return displayCelsius - probeCelsius;
    }

    /**
     * The verdict: agrees where the difference is within the tolerance for sure, disagrees where it is
     * outside for sure.
     *
     * @param toleranceCelsius the difference the keeper accepts, at least 0
     * @param coverageFactor how many standard uncertainties "for sure" takes, commonly 2
     */
    public Verdict verdict(double toleranceCelsius, double coverageFactor) {
        Require.within("toleranceCelsius", toleranceCelsius, 0, Double.MAX_VALUE);
        double reach = uncertainty.expanded(coverageFactor);
        double distance = Math.abs(difference());
        if (distance <= toleranceCelsius - reach) {
            return Verdict.AGREES;
        }
        return distance > toleranceCelsius + reach ? Verdict.DISAGREES : Verdict.CANNOT_TELL;
    }
}
