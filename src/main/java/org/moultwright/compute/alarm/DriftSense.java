package org.moultwright.compute.alarm;

/**
 * Notices that the temperature leaves what the incubator usually makes of its set-point: a cumulative sum of
 * 15-minute means of measured less set-point less habit.
 *
 * <p>The habit is the mean of the first whole day, so that the daily swing of the room is in it with both its
 * halves. It is believed only so far: what an incubator is off by more than that is drift.
 *
 * @param habit what was learned of the habit
 * @param quarter the quarter-hour being heard
 * @param sums how far it has gone
 * @param calmQuarters for how many quarter-hours it has been as usual again
 */
public record DriftSense(Habit habit, Quarter quarter, Cusum sums, int calmQuarters) {
    static final DriftSense START = new DriftSense(new Habit(0, 0), Quarter.of(-1), Cusum.ZERO, 0);

    private static final long QUARTER_MILLIS = 900_000;

    /** A quarter-hour heard for less than this tells nothing. */
    private static final long ENOUGH_HEARD_MILLIS = QUARTER_MILLIS / 3;

    /** An hour as usual forgets what went before. */
    private static final int CALM_QUARTERS = 4;

    /** The sum and number of quarter-hours learned from. */
    record Habit(double sumCelsius, int quarters) {
        boolean isLearned(DriftSettings settings) {
            return quarters >= settings.learnQuarters();
        }

        double celsius(DriftSettings settings) {
            double most = settings.believedOffsetCelsius();
            return Math.max(-most, Math.min(most, sumCelsius / quarters));
        }
    }

    /** The readings of one quarter-hour of the steady clock, less their set-points. */
    record Quarter(long number, double sumCelsius, int readings, long heardMillis) {
        static Quarter of(long number) {
            return new Quarter(number, 0, 0, 0);
        }

        Quarter with(double celsius, long heard) {
            return new Quarter(number, sumCelsius + celsius, readings + 1, heardMillis + heard);
        }

        boolean tells() {
            return readings > 0 && heardMillis >= ENOUGH_HEARD_MILLIS;
        }
    }

    /**
     * @param aboveSetPoint the measured temperature less the set-point, in K
     * @param heardMillis the time this reading speaks for
     */
    DriftSense after(double aboveSetPoint, long steadyMillis, long heardMillis, DriftSettings settings) {
        long number = steadyMillis / QUARTER_MILLIS;
        DriftSense ready = number == quarter.number() || !quarter.tells() ? this : judged(settings);
        Quarter open = number == quarter.number() ? quarter : Quarter.of(number);
        return new DriftSense(ready.habit, open.with(aboveSetPoint, heardMillis), ready.sums, ready.calmQuarters);
    }

    /** The sums and the open quarter-hour forgotten, the habit kept: after the set-point was changed. */
    DriftSense settling() {
        return new DriftSense(habit, Quarter.of(-1), Cusum.ZERO, 0);
    }

    /** The farther sum in K quarter-hours, NaN before the habit is known. */
    double sum(DriftSettings settings) {
        return habit.isLearned(settings) ? sums.farther() : Double.NaN;
    }

    private DriftSense judged(DriftSettings settings) {
        double mean = quarter.sumCelsius() / quarter.readings();
        if (!habit.isLearned(settings)) {
            return new DriftSense(new Habit(habit.sumCelsius() + mean, habit.quarters() + 1), quarter, sums, 0);
        }
        double deviation = mean - habit.celsius(settings);
        int calm = Math.abs(deviation) < settings.slackCelsius() ? calmQuarters + 1 : 0;
        Cusum next = calm >= CALM_QUARTERS ? Cusum.ZERO : sums.after(deviation, settings.slackCelsius());
        return new DriftSense(habit, quarter, next, calm);
    }
}
