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
            if (2 * withAny.length >= ages.finallyPassedLast().length) {
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

    private InstantInterval interval(int boundary, Milestone milestone, int[] draws) {
        double[] agesByDraw = ages.at(boundary, milestone);
        InstantInterval played = InstantInterval.of(Arrays.stream(draws)
                .mapToDouble(draw -> clock.millisAt(agesByDraw[draw], draw))
                .toArray());
        return played.p50().isAfter(clock.now()) ? played.widened(widthFactor) : played;
    }
}
