package org.moultwright.ui.forecast;

import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.Milestone;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.forecast.SacForecast;
import org.moultwright.domain.Brood;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.text.SacWords;
import org.moultwright.ui.chart.Lane;

/**
 * An unopened sac as one lane. It is drawn up to the nymphs, since by then it is opened; later dates, which are weeks
 * wide, would squeeze the trays' calendar and are told in words.
 */
final class SacLane {
    private SacLane() {}

    static Optional<LaneLine> of(Brood brood, BroodForecast forecast, SacWords words) {
        return forecast.sac()
                .map(sac -> of(
                        brood.code(),
                        sac,
                        words.pull(sac, brood, forecast.asOf()).orElse(Texts.say("dates from belief alone")),
                        forecast.asOf(),
                        words));
    }

    private static LaneLine of(String brood, SacForecast sac, String phrase, Instant now, SacWords words) {
        return new LaneLine(
                brood,
                Texts.say("Sac of {0}", brood),
                Texts.say("unopened"),
                phrase,
                Texts.say("Sac of {0}: {1}, {2}.", brood, words.age(sac), phrase),
                sac.moults().stream().map(moult -> inWords(moult, words)).toList(),
                new Lane(sac.moults().stream()
                        .filter(moult -> !moult.into().isAtLeast(Stage.DARKENED))
                        .flatMap(moult -> Arrays.stream(Milestone.values())
                                .filter(milestone -> !moult.at(milestone).isFarFrom(now))
                                .map(milestone -> window(milestone, moult)))
                        .toList()),
                Optional.empty());
    }

    private static LaneLine.Windows inWords(MoultForecast moult, SacWords words) {
        return new LaneLine.Windows(moult.into(), words.windows(moult));
    }

    /** Nobody has looked: nothing is drawn as if it had been seen. */
    private static Lane.Window window(Milestone milestone, MoultForecast moult) {
        InstantInterval when = moult.at(milestone);
        Lane.Row row =
                switch (milestone) {
                    case FIRST -> Lane.Row.FIRST;
                    case HALF -> Lane.Row.HALF;
                    case MOST -> Lane.Row.MOST;
                };
        return new Lane.Window(row, moult.into(), when.p10(), when.p50(), when.p90(), false, "");
    }
}
