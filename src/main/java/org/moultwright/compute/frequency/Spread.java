package org.moultwright.compute.frequency;

/** How the spread of development among animals grows with time t. */
public enum Spread {
    /** The cumulative logit with a straight line in t (Candy 1991). */
    CONSTANT(0),
    /** Variance b² t, as in Dennis, Kemp &amp; Beckwith 1986. */
    ROOT_OF_TIME(0.5);

    private final double power;

    Spread(double power) {
        this.power = power;
    }

    /** The spread at a time, up to its constant factor. */
    double at(double time) {
        return Math.pow(time, power);
    }
}
