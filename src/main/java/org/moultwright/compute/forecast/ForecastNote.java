package org.moultwright.compute.forecast;

/**
 * Something a reader of a forecast must know, to be put into words elsewhere.
 *
 * @param kind what it is
 * @param subject the tray, probe or container it is about, possibly empty
 * @param value a number that belongs to it, or NaN
 */
public record ForecastNote(Kind kind, String subject, double value) {

    /** The kinds of note. */
    public enum Kind {
        /** Nothing to go on: the brood has no date, or the tray never held an animal. */
        TOO_LITTLE_TO_GO_ON,
        /** The laying is written down for later than the instant of the question. */
        LAID_LATER,
        /** Nobody has opened the sac: dates come from belief and climate alone, as of so many eggs. */
        SAC_UNOPENED,
        /** Laying is unknown: ages count from the first check. */
        AGES_FROM_FIRST_CHECK,
        /** The timing is the general default, an assumption. */
        GENERAL_TIMING_ASSUMED,
        /** No probe reading: the set-point stands in. */
        SET_POINT_STANDS_IN,
        /** No probe reading for some of the time: a lowest and a highest stand in. */
        EXTREMES_STAND_IN,
        /** Neither reading nor set-point: the reference temperature stands in. */
        REFERENCE_TEMPERATURE_STANDS_IN,
        /** This share of the time, in percent, was filled and not measured. */
        GAPS_FILLED,
        /** Counts and ledger disagree by this many animals. */
        COUNTS_DISAGREE,
        /** The last whole count of this tray is so many animals off the ledger, and off what all its counts say. */
        LAST_COUNT_OFF,
        /** Checks before laying were passed over, this many. */
        CHECKS_BEFORE_LAYING,
        /** The sac was opened before the earliest laying. */
        OPENED_BEFORE_LAYING,
        /** Of this tray half will not moult within a year: the temperatures to come leave hardly any development. */
        HARDLY_DEVELOPS,
        /** Nobody is left alive in this tray. */
        NONE_ALIVE,
        /** The counts of this tray scatter as the model hardly can: its dates are not to be trusted. */
        COUNTS_BEYOND_MODEL,
        /** Forecasts of earlier broods were off by more than they said: intervals are so many percent wider. */
        INTERVALS_WIDENED,
        /** The sampler fell back to a slower, coarser way. */
        COARSE_POSTERIOR
    }
}
