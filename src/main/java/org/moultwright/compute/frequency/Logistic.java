package org.moultwright.compute.frequency;

/** The logistic distribution function and its density. */
final class Logistic {
    private Logistic() {}

    static double of(double x) {
        return 1 / (1 + Math.exp(-x));
    }

    static double density(double x) {
        double probability = of(x);
        return probability * (1 - probability);
    }
}
