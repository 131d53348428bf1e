package org.moultwright.compute.climate;

import java.util.function.ToDoubleFunction;

/** What adds up, never falling, along ramps that stand end to end; instants in epoch milliseconds. */
final class RunningTotal {
    private final Ramp[] ramps;
    private final double[] atStart;
    private final ToDoubleFunction<Ramp> gainAlong;

    /** @param ramps shared, and not changed by anybody */
    RunningTotal(Ramp[] ramps, ToDoubleFunction<Ramp> gainAlong) {
        this.ramps = ramps;
        this.atStart = new double[ramps.length + 1];
        this.gainAlong = gainAlong;
        for (int i = 0; i < ramps.length; i++) {
            atStart[i + 1] = atStart[i] + gainAlong.applyAsDouble(ramps[i]);
        }
    }

    double total() {
        return atStart[ramps.length];
    }

    /** The total up to an instant: 0 before the first ramp, everything after the last. */
    double at(long millis) {
        int ramp = firstEndingAtOrAfter(millis);
        if (ramp == ramps.length) {
            return total();
        }
        return millis <= ramps[ramp].fromMillis() ? atStart[ramp] : within(ramp, millis);
    }

    /** The first instant at which the total reaches an amount above 0 that it does reach. */
    long firstMillisReaching(double amount) {
        int ramp = firstRampReaching(amount);
        long below = ramps[ramp].fromMillis();
        long reached = ramps[ramp].toMillis();
        while (reached - below > 1) {
            long middle = (below + reached) >>> 1;
            if (within(ramp, middle) >= amount) {
                reached = middle;
            } else {
                below = middle;
            }
        }
        return reached;
    }

    private double within(int ramp, long millis) {
        Ramp whole = ramps[ramp];
        if (millis >= whole.toMillis()) {
            return atStart[ramp + 1];
        }
        double gained = gainAlong.applyAsDouble(whole.between(whole.fromMillis(), millis));
        return Math.min(atStart[ramp] + gained, atStart[ramp + 1]);
    }

    private int firstEndingAtOrAfter(long millis) {
        int low = 0;
        int high = ramps.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (ramps[middle].toMillis() >= millis) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private int firstRampReaching(double amount) {
        int low = 0;
        int high = ramps.length - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (atStart[middle + 1] >= amount) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
