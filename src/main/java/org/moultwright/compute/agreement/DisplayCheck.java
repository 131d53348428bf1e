package org.moultwright.compute.agreement;

import org.moultwright.domain.Require;

/**
 * A reading of an incubator's display beside that of a probe at the same time.
 *
 * @param displayCelsius what the display showed
 * @param probeCelsius what the probe measured, corrected
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

        /**
         * Of a display whose last digit counts in steps: any true value within half a step either way is
         * equally likely (JCGM 100:2008, 4.3.7).
         */
        public static Uncertainty ofStep(double probe, double displayStepCelsius, double position) {
            return new Uncertainty(probe, displayStepCelsius / Math.sqrt(12), position);
        }

        public double combined() {
            return Math.sqrt(probe * probe + resolution * resolution + position * position);
        }

        /** The combined uncertainty, widened by a coverage factor. */
        public double expanded(double coverageFactor) {
            return coverageFactor * combined();
        }
    }

    /**
     * The whole arithmetic of a verdict, in K, for a screen to show.
     *
     * @param difference the display less the probe
     * @param reach the expanded uncertainty
     * @param agreesWithin a difference up to this is within the tolerance for sure; below 0 nothing can be
     * @param disagreesBeyond a difference above this is outside it for sure
     */
    public record Judgement(
            double difference,
            Uncertainty uncertainty,
            double coverageFactor,
            double reach,
            double tolerance,
            double agreesWithin,
            double disagreesBeyond,
            Verdict verdict) {}

    /** The display less the probe, in K. */
    public double difference() {
        return displayCelsius - probeCelsius;
    }

    /** The verdict alone; see {@link #judge}. */
    public Verdict verdict(double toleranceCelsius, double coverageFactor) {
        return judge(toleranceCelsius, coverageFactor).verdict();
    }

    /**
     * Judges the display: it agrees where the difference is within the tolerance for sure, and disagrees where
     * it is outside for sure.
     *
     * @param toleranceCelsius the difference the keeper accepts, at least 0
     * @param coverageFactor how many standard uncertainties "for sure" takes, commonly 2
     */
    public Judgement judge(double toleranceCelsius, double coverageFactor) {
        Require.within("toleranceCelsius", toleranceCelsius, 0, Double.MAX_VALUE);
        double reach = uncertainty.expanded(coverageFactor);
        double agreesWithin = toleranceCelsius - reach;
        double disagreesBeyond = toleranceCelsius + reach;
        return new Judgement(
                difference(),
                uncertainty,
                coverageFactor,
                reach,
                toleranceCelsius,
                agreesWithin,
                disagreesBeyond,
                verdict(Math.abs(difference()), agreesWithin, disagreesBeyond));
    }

    private static Verdict verdict(double distance, double agreesWithin, double disagreesBeyond) {
        if (distance <= agreesWithin) {
            return Verdict.AGREES;
        }
        return distance > disagreesBeyond ? Verdict.DISAGREES : Verdict.CANNOT_TELL;
    }
}
