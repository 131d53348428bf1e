package org.moultwright.compute.climate;

import java.util.OptionalDouble;

/** A weighted mean being gathered. */
final class Mean {
    private double weightedSum;
    private double weight;

    void add(double value, double valueWeight) {
        weightedSum += value * valueWeight;
        weight += valueWeight;
    }

    /** The mean of what was added; NaN before anything was. */
    double value() {
        return weightedSum / weight;
    }

    OptionalDouble ifAny() {
        return weight > 0 ? OptionalDouble.of(value()) : OptionalDouble.empty();
    }
}
