package org.moultwright.ui.broods;

import java.util.Optional;
import org.moultwright.compute.history.BroodSurvival;
import org.moultwright.language.Texts;
import org.moultwright.ui.chart.SurvivalChart;

/** How many of a brood are alive, drawn and in words. */
final class SurvivalFigure {
    private SurvivalFigure() {}

    /** Its curve; empty while nothing of it was in a tray. */
    static Optional<SurvivalChart.Curve> curve(BroodFacts facts) {
        return facts.survival()
                .map(survival -> new SurvivalChart.Curve(
                        facts.brood().code(),
                        survival.days(),
                        survival.points().stream()
                                .map(point -> new SurvivalChart.Step(
                                        point.days(), point.survival(), point.lower(), point.upper()))
                                .toList()));
    }

    /** "In trays 93 % of 118 lived 40 days; 95 % limits 87 to 96 %.": what the curve says in words. */
    static String words(BroodFacts facts) {
        return facts.survival().map(SurvivalFigure::words).orElse(Texts.say("Nothing of it is in a tray yet."));
    }

    static String words(BroodSurvival survival) {
        long days = Math.round(survival.days());
        BroodSurvival.Point last = survival.last();
        if (last.survival() >= 1) {
            return Texts.say(
                    "None of {0} died in a tray in {1} days, so there are no limits to tell.",
                    survival.animals(), days);
        }
        return Texts.say(
                "In trays {0} % of {1} lived {2} days; 95 % limits {3} to {4} %.",
                Math.round(100 * last.survival()),
                survival.animals(),
                days,
                Math.round(100 * last.lower()),
                Math.round(100 * last.upper()));
    }
}
