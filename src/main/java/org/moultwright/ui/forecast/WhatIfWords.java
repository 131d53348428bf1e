package org.moultwright.ui.forecast;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;

/**
 * What a set-point tried on would change, in sentences.
 *
 * @param vocabulary the names of the stages
 * @param days the keeper's days
 */
record WhatIfWords(Vocabulary vocabulary, DayWords days) {
    private static final double MINUTES_PER_DAY = Duration.ofDays(1).toMinutes();

    /** "What if 28.3 °C from now on? These are not the dates you have." */
    static String mark(double celsius) {
        return Texts.say("What if: {0} from now on. These are not the dates you have.", Temperatures.words(celsius));
    }

    /** "At 25.5 °C half of B1 would be slings 3 days later, 12 to 17 May." */
    String change(double celsius, Foreseen asItIs, Foreseen tried, Instant now) {
        String at = Texts.say("At {0} ", Temperatures.words(celsius));
        Optional<InstantInterval> before = half(asItIs);
        Optional<InstantInterval> after = half(tried);
        if (before.isEmpty() || after.isEmpty()) {
            return Texts.say("{0}too little is known of {1} to say what would change.", at, tried.code());
        }
        String stages = vocabulary.plural(tried.lastStage());
        if (!before.get().p90().isAfter(now)) {
            return Texts.say("Half of {0} are {1} already, whatever the temperature.", tried.code(), stages);
        }
        return Texts.say(
                "{0}half of {1} would be {2} {3}, {4}.",
                at,
                tried.code(),
                stages,
                shift(before.get().p50(), after.get().p50()),
                days.days(after.get().p10(), after.get().p90()));
    }

    private static Optional<InstantInterval> half(Foreseen tray) {
        return tray.moult(tray.lastStage()).map(MoultForecast::half);
    }

    private static String shift(Instant before, Instant after) {
        long wholeDays = Math.round(Duration.between(before, after).toMinutes() / MINUTES_PER_DAY);
        if (wholeDays == 0) {
            return Texts.say("on about the same day");
        }
        long apart = Math.abs(wholeDays);
        return wholeDays > 0
                ? Texts.count(apart, "{0} day later", "{0} days later", apart)
                : Texts.count(apart, "{0} day earlier", "{0} days earlier", apart);
    }
}
