package org.moultwright.compute.stage;

/**
 * An age whose log is taken once for many laws.
 *
 * @param log of the age in warm-days; −∞ at laying
 * @param inverse of the age
 */
record LoggedAge(double log, double inverse) {
    /** Up to here four terms of the series leave an error below 1e-9. */
    private static final double SMALL = 0.02;

    static LoggedAge of(double age) {
        return new LoggedAge(age > 0 ? Math.log(age) : Double.NEGATIVE_INFINITY, 1 / age);
    }

    /** The log of the age and a shift of it. */
    double shiftedLog(double shift) {
        double share = shift * inverse;
        if (Math.abs(share) < SMALL) {
            return log + share * (1 - share * (0.5 - share * (1 / 3.0 - share / 4)));
        }
        double age = 1 / inverse + shift;
        return age > 0 ? Math.log(age) : Double.NEGATIVE_INFINITY;
    }
}
