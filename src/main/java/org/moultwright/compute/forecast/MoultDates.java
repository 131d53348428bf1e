package org.moultwright.compute.forecast;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.moultwright.compute.stage.TrayHistory;
import org.moultwright.domain.Stage;

/** Puts dates to the ages of one tray's moults. */
final class MoultDates {
    private final TrayHistory tray;
    private final MoultAges ages;
    private final TrayClock clock;
    private final double widthFactor;

    /** By boundary told of, the date at each milestone by draw; NaN where nobody gets there. */
    private final Map<Integer, Map<Milestone, double[]>> told = new TreeMap<>();

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
        for (int boundary = 0; boundary < tray.evidence().size(); boundary++) {
            int[] withAny = ages.drawsWithAny(boundary);
            if (2 * withAny.length >= ages.finallyPassedLast().length) {
                told.put(boundary, dates(boundary, withAny));
            }
        }
    }

    /** One forecast for each boundary that at least half of all draws see passed by any. */
    List<MoultForecast> forecasts(List<Stage> boundaries) {
        return told.entrySet().stream()
                .map(entry -> new MoultForecast(
                        boundaries.get(entry.getKey()),
                        tray.evidence().get(entry.getKey()).last().passed(),
                        interval(entry.getValue(), Milestone.FIRST),
                        interval(entry.getValue(), Milestone.HALF),
                        interval(entry.getValue(), Milestone.MOST)))
                .toList();
    }

    /** The dates behind the forecasts, draw by draw. */
    PossibleDates possible(List<Stage> boundaries, double effectiveDraws) {
        return new PossibleDates(
                told.keySet().stream().map(boundaries::get).toList(),
                told.values().stream()
                        .flatMap(byMilestone -> byMilestone.values().stream())
                        .toArray(double[][]::new),
                effectiveDraws);
    }

    private Map<Milestone, double[]> dates(int boundary, int[] withAny) {
        Map<Milestone, double[]> dates = new EnumMap<>(Milestone.class);
        for (Milestone milestone : Milestone.values()) {
            double[] byDraw = new double[ages.finallyPassedLast().length];
            Arrays.fill(byDraw, Double.NaN);
            for (int draw : withAny) {
                byDraw[draw] = millis(boundary, milestone, draw);
            }
            dates.put(milestone, widened(byDraw));
        }
        return dates;
    }

    /** As many times as far from their middle, never before the first of them; what lies behind is left as it is. */
    private double[] widened(double[] byDraw) {
        if (widthFactor == 1) {
            return byDraw;
        }
        Quantiles known = Quantiles.of(known(byDraw));
        double middle = known.percent(50);
        if (middle <= (double) clock.now().toEpochMilli()) {
            return byDraw;
        }
        double earliest = known.percent(0);
        return Arrays.stream(byDraw)
                .map(at -> Double.isNaN(at) ? at : Math.max(earliest, middle + widthFactor * (at - middle)))
                .toArray();
    }

    private static double[] known(double[] byDraw) {
        return Arrays.stream(byDraw).filter(at -> !Double.isNaN(at)).toArray();
    }

    private static InstantInterval interval(Map<Milestone, double[]> dates, Milestone milestone) {
        return InstantInterval.of(known(Objects.requireNonNull(dates.get(milestone))));
    }

    private double millis(int boundary, Milestone milestone, int draw) {
        return clock.millisAt(ages.at(boundary, milestone)[draw], draw);
    }
}
