package org.moultwright.compute.forecast;

import org.moultwright.compute.stage.Chance;

/**
 * When mould may next break out in a tray, and what it may take. How often it does is gamma-distributed, sharpened by
 * how often it did in the trays of the kind's broods. All figures are assumptions, common practice without a source.
 */
final class BurstRisk {
    /** As if one tray in ten had had it in forty-five warm-days. */
    private static final double BURSTS_BELIEVED = 1;

    private static final double TRAY_WARM_DAYS_BELIEVED = 450;

    /** It kills about a fifth, seldom more than two fifths. */
    private static final double KILLED = 2.5;

    private static final double LEFT_ALIVE = 10;

    private final double bursts;
    private final double trayWarmDays;

    BurstRisk(LifeTable earlier, LifeTable own) {
        this.bursts = BURSTS_BELIEVED + earlier.bursts() + own.bursts();
        this.trayWarmDays = TRAY_WARM_DAYS_BELIEVED + earlier.trayWarmDays() + own.trayWarmDays();
    }

    /** The next burst in one tray from an age on, in each of many possible truths. */
    Bursts next(double nowAge, int draws, Chance chance) {
        double[] ages = new double[draws];
        double[] shares = new double[draws];
        for (int draw = 0; draw < draws; draw++) {
            double perWarmDay = chance.gamma(bursts) / trayWarmDays;
            ages[draw] = nowAge + chance.gamma(1) / perWarmDay;
            shares[draw] = chance.beta(KILLED, LEFT_ALIVE);
        }
        return new Bursts(ages, shares);
    }
}
