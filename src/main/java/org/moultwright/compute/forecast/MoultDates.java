package org.moultwright.compute.forecast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.moultwright.compute.stage.TrayHistory;
import org.moultwright.domain.Stage;

/** Puts dates to the ages of one tray's moults. */
final class MoultDates {
    private final TrayHistory tray;
    private final MoultAges ages;
    private final TrayClock clock;
    private final double widthFactor;

    /**
     * Dates of what was played.
     *
     * @param widthFactor by how much wider than played what lies ahead is taken to be
     */
    MoultDates(TrayHistory tray, MoultAges ages, TrayClock clock, double widthFactor) {
        this.tray = tray;
        this.ages = ages;
        this.clock = clock;
        this.widthFactor = widthFactor;
    }

    /** One forecast for each boundary that at least half of all draws see passed by any. */
    List<MoultForecast> forecasts(List<Stage> boundaries) {
        List<MoultForecast> forecasts = new ArrayList<>();
        for (int k = 0; k < boundaries.size(); k++) {
            int[] withAny = ages.drawsWithAny(k);
            if (isToldOf(withAny)) {
                forecasts.add(new MoultForecast(
                        boundaries.get(k),
                        tray.evidence().get(k).last().passed(),
                        interval(k, Milestone.FIRST, withAny),
                        interval(k, Milestone.HALF, withAny),
                        interval(k, Milestone.MOST, withAny)));
            }
        }
        return forecasts;
    }

    /** The dates behind the forecasts, draw by draw. */
    PossibleDates possible(List<Stage> boundaries, double effectiveDraws) {
        List<Stage> told = new ArrayList<>();
        List<double[]> dates = new ArrayList<>();
        for (int k = 0; k < boundaries.size(); k++) {
            int[] withAny = ages.drawsWithAny(k);
            if (isToldOf(withAny)) {
                told.add(boundaries.get(k));
                for (Milestone milestone : Milestone.values()) {
                    double[] byDraw = new double[ages.finallyPassedLast().length];
                    Arrays.fill(byDraw, Double.NaN);
                    for (int draw : withAny) {
                        byDraw[draw] = millis(k, milestone, draw);
                    }
                    dates.add(widened(byDraw, withAny));
                }
            }
        }
        return new PossibleDates(told, dates.toArray(double[][]::new), effectiveDraws);
    }

    /** As far from their middle as the interval told is wider than the draws, never before the first of them. */
    private double[] widened(double[] byDraw, int[] withAny) {
        double[] known =
                Arrays.stream(withAny).mapToDouble(draw -> byDraw[draw]).toArray();
        double middle = Quantiles.of(known).percent(50);
        if (middle <= (double) clock.now().toEpochMilli()) {
            return byDraw;
        }
        double earliest = Quantiles.of(known).percent(0);
        return Arrays.stream(byDraw)
                .map(at -> Double.isNaN(at) ? at : Math.max(earliest, middle + widthFactor * (at - middle)))
                .toArray();
    }

    private boolean isToldOf(int[] withAny) {
        return 2 * withAny.length >= ages.finallyPassedLast().length;
    }

    private InstantInterval interval(int boundary, Milestone milestone, int[] draws) {
        InstantInterval played = InstantInterval.of(Arrays.stream(draws)
                .mapToDouble(draw -> millis(boundary, milestone, draw))
                .toArray());
        return played.p50().isAfter(clock.now()) ? played.widened(widthFactor) : played;
    }

    private double millis(int boundary, Milestone milestone, int draw) {
        return clock.millisAt(ages.at(boundary, milestone)[draw], draw);
    }
}
