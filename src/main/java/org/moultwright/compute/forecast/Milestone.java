package org.moultwright.compute.forecast;

/** The passes of a tray that have a date of their own. */
enum Milestone {
    FIRST,
    HALF,
    MOST;

    /** Which pass it is, of so many that come in the end. */
    int rank(int finallyPassed) {
        return switch (this) {
            case FIRST -> 1;
            case HALF -> (int) Math.ceil(0.5 * finallyPassed);
            case MOST -> (int) Math.ceil(0.95 * finallyPassed);
        };
    }
}
