package org.moultwright.compute.stage;

/**
 * When one tray's animals pass one boundary: log age is normal, but for the share that never passes.
 *
 * @param logMedian log of the median age at passing, in warm-days
 * @param logSpread standard deviation of the log of that age, above 0
 * @param neverShare share of the animals that will never pass, within [0, 1)
 * @param ageShiftWarmDays how much older the animals are than the ages stated to this
 */
public record PassingLaw(double logMedian, double logSpread, double neverShare, double ageShiftWarmDays) {
    /** Share of animals misread at a look, either way (assumption, from simulated broods). */
    public static final double MISREAD = 0.0015;

    /** The share not yet passed at an age, of those that ever will. */
    public double survival(double age) {
        return QuickTail.survival(deviate(age));
    }

    /** The same of an age whose log is known; so late that only one in 1e15 is left, nobody. */
    double survival(LoggedAge age) {
        double deviate = deviate(age);
        return deviate < QuickTail.TO ? QuickTail.survival(deviate) : 0;
    }

    /** How many spreads an age lies beyond the median, in logs. */
    double deviate(double age) {
        double trueAge = age + ageShiftWarmDays;
        return trueAge > 0 ? (Math.log(trueAge) - logMedian) / logSpread : Double.NEGATIVE_INFINITY;
    }

    /** The same of an age whose log is known. */
    double deviate(LoggedAge age) {
        return (age.shiftedLog(ageShiftWarmDays) - logMedian) / logSpread;
    }

    /** The age so many spreads beyond the median. */
    double ageAtDeviate(double deviate) {
        return Math.exp(logMedian + logSpread * deviate) - ageShiftWarmDays;
    }

    /** The age at which so few have not yet passed, of those that ever will. */
    public double ageAtSurvival(double share) {
        return ageAtDeviate(NormalTails.inverseSurvival(share));
    }

    /** The chance that an animal waiting at one age has passed by another. */
    public double passedIfWaitingAt(double age, double then) {
        return passedIfWaiting(survival(age), survival(then));
    }

    /** The same between two looks, by the shares not yet passed there. */
    double passedIfWaiting(double survivalBefore, double survivalAfter) {
        double waiting = (1 - neverShare) * survivalBefore + neverShare;
        return waiting > 0 ? (1 - neverShare) * (survivalBefore - survivalAfter) / waiting : 1;
    }

    /** The chance that an animal waiting at the first of two looks is read as passed at the second. */
    static double readAsPassed(double passing) {
        return passing * (1 - 2 * MISREAD) + MISREAD;
    }
}
