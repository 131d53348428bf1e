package org.moultwright.ui.forecast;

import java.util.List;
import org.moultwright.compute.forecast.Milestone;
import org.moultwright.compute.scoring.Accuracy;
import org.moultwright.compute.scoring.EvenBand;
import org.moultwright.compute.scoring.Outcome;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.chart.TenthsChart;
import org.moultwright.workflow.ScoreForecasts;

/**
 * How good the dates of one event were.
 *
 * @param event such as "half are slings"
 * @param forecasts how many were scored
 * @param events how many happenings they were about; those about one are early or late together
 * @param off mean distance of the middle from the truth, in days
 * @param late how late the middle was on average, in words
 * @param crps mean continuous ranked probability score in days
 * @param covered share of truths within the 80 % window
 * @param isFew whether so few say little
 * @param tenths where in their forecast's probability the truths fell
 */
record ScoreLine(
        Milestone milestone,
        String event,
        int forecasts,
        int events,
        String off,
        String late,
        String crps,
        String covered,
        boolean isFew,
        TenthsChart.Shown tenths) {
    /** Below so many happenings a share within a window may be off by a quarter by chance alone. */
    static final int FEW_EVENTS = 10;

    static ScoreLine of(ScoreForecasts.Scored scored, Vocabulary vocabulary) {
        Accuracy accuracy = Accuracy.of(scored.outcomes());
        int events =
                (int) scored.outcomes().stream().map(Outcome::truth).distinct().count();
        EvenBand band = EvenBand.of(events);
        double forecastsAnEvent = (double) accuracy.count() / events;
        String stages = vocabulary.plural(scored.into());
        return new ScoreLine(
                scored.milestone(),
                switch (scored.milestone()) {
                    case FIRST -> Texts.say("first {0}", stages);
                    case HALF -> Texts.say("half are {0}", stages);
                    case MOST -> Texts.say("95 % are {0}", stages);
                },
                accuracy.count(),
                events,
                days(accuracy.meanAbsoluteErrorDays()),
                accuracy.biasDays() < 0
                        ? Texts.say("{0} early", days(-accuracy.biasDays()))
                        : Texts.say("{0} late", days(accuracy.biasDays())),
                days(accuracy.crpsDays()),
                Math.round(100 * accuracy.coverage()) + " %",
                events < FEW_EVENTS,
                new TenthsChart.Shown(
                        accuracy.pitCounts(), band.low() * forecastsAnEvent, band.high() * forecastsAnEvent));
    }

    List<String> cells() {
        return List.of(event, Integer.toString(events), Integer.toString(forecasts), off, late, crps, covered);
    }

    private static String days(double days) {
        return Numbers.fixed(days, 1);
    }
}
