package org.moultwright.compute.mould;

import org.moultwright.domain.Require;

/**
 * How much growth a surface's air has favoured so far: 0 none, 1 seen under a microscope, 3 seen by eye, 6
 * all over.
 *
 * @param value the index, within [0, 6]
 */
public record MouldIndex(double value) {
    public static final MouldIndex NONE = new MouldIndex(0);

    private static final double LONGEST_STEP_DAYS = 1.0 / 24;

    public MouldIndex {
        Require.within("value", value, 0, 6);
    }

    /** The index after a further time in a climate; it never falls, for dry spells are not credited. */
    public MouldIndex after(MouldClimate climate, double days) {
        Require.within("days", days, 0, Double.MAX_VALUE);
        int steps = (int) Math.ceil(days / LONGEST_STEP_DAYS);
        double index = value;
        for (int i = 0; i < steps; i++) {
            double step = days / steps;
            double middle = index + climate.growthPerDay(index) * step / 2;
            index += climate.growthPerDay(middle) * step;
        }
        return new MouldIndex(Math.min(index, 6));
    }
}
