package org.moultwright.compute.forecast;

import java.util.Arrays;
import java.util.List;
import org.moultwright.domain.Stage;

/**
 * When the moults of one tray reach their milestones, in each of many possible truths. The draws of the trays of one
 * brood belong together: the same number is the same truth. Immutable.
 */
public final class PossibleDates {
    private static final double MILLIS_PER_MINUTE = 60_000;

    /** Before any instant asked for. */
    private static final int NOBODY = Integer.MIN_VALUE;

    /** Nothing is known. */
    public static final PossibleDates NONE = new PossibleDates(List.of(), new double[0][], 0);

    private static final int MILESTONES = Milestone.values().length;

    private final List<Stage> stages;

    /** Whole minutes are as sharp as anybody asks, in half the room. */
    private final int[][] epochMinutes;

    private final double effectiveDraws;

    /**
     * @param stages entered, in order
     * @param epochMillis for each stage and milestone the instants by draw; NaN where nobody gets there
     * @param effectiveDraws how many independent draws they are worth
     */
    PossibleDates(List<Stage> stages, double[][] epochMillis, double effectiveDraws) {
        this.stages = List.copyOf(stages);
        this.epochMinutes =
                Arrays.stream(epochMillis).map(PossibleDates::minutes).toArray(int[][]::new);
        this.effectiveDraws = effectiveDraws;
    }

    List<Stage> stages() {
        return stages;
    }

    int draws() {
        return epochMinutes.length == 0 ? 0 : epochMinutes[0].length;
    }

    double effectiveDraws() {
        return effectiveDraws;
    }

    /** Whether a milestone falls after one instant and by another in a draw, all in milliseconds of the epoch. */
    boolean isBetween(int stage, Milestone milestone, int draw, double from, double to) {
        int minutes = epochMinutes[stage * MILESTONES + milestone.ordinal()][draw];
        double at = minutes * MILLIS_PER_MINUTE;
        return minutes != NOBODY && at > from && at <= to;
    }

    private static int[] minutes(double[] epochMillis) {
        return Arrays.stream(epochMillis)
                .mapToInt(millis -> Double.isNaN(millis) ? NOBODY : (int) Math.rint(millis / MILLIS_PER_MINUTE))
                .toArray();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PossibleDates dates
                && stages.equals(dates.stages)
                && effectiveDraws == dates.effectiveDraws
                && Arrays.deepEquals(epochMinutes, dates.epochMinutes);
    }

    @Override
    public int hashCode() {
        return 31 * stages.hashCode() + Arrays.deepHashCode(epochMinutes);
    }
}
