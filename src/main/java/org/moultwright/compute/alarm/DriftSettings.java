package org.moultwright.compute.alarm;

import org.moultwright.domain.Require;

/**
 * How drift is told from habit.
 *
 * @param slackCelsius what a quarter-hour may deviate without counting: half the shift to be found
 * @param learnQuarters how many quarter-hours the habit is learned from; whole days, for the room swings by day
 * @param believedOffsetCelsius how far off its set-point a habit may lie
 */
public record DriftSettings(double slackCelsius, int learnQuarters, double believedOffsetCelsius) {
    /** See docs/methods/alarms.md for the reasons. */
    public static final DriftSettings USUAL = new DriftSettings(0.3, 96, 1.5);

    public DriftSettings {
        Require.within("slackCelsius", slackCelsius, 0, 10);
        Require.atLeast("learnQuarters", learnQuarters, 1);
        Require.within("believedOffsetCelsius", believedOffsetCelsius, 0, 10);
    }
}
