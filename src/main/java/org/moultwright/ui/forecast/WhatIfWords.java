package org.moultwright.ui.forecast;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.Milestone;
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

    /** "At 25.5 °C half of B1 would be slings 3 days later, 12 to 17 May.", or of 95 % once half are. */
    String change(double celsius, Foreseen asItIs, Foreseen tried, Instant now) {
        if (asItIs.moult(asItIs.lastStage()).isEmpty()) {
            return Texts.say(
                    "At {0} too little is known of {1} to say what would change.",
                    Temperatures.words(celsius), tried.code());
        }
        return asItIs.movable(now)
                .flatMap(milestone -> asItIs.last(milestone)
                        .flatMap(before -> tried.last(milestone)
                                .map(after -> moved(celsius, tried, milestone, before.p50(), after))))
                .orElseGet(() -> Texts.say(
                        "95 % of {0} are {1} already, whatever the temperature.", tried.code(), stages(tried)));
    }

    /** "A1: half are slings", over the dates under other set-points; what is over is said to be. */
    String title(Foreseen tray, Instant now) {
        if (tray.moult(tray.lastStage()).isEmpty()) {
            return Texts.say("{0}: too early to say when half are {1}.", tray.code(), stages(tray));
        }
        Optional<Milestone> movable = tray.movable(now);
        if (movable.isPresent()) {
            return movable.get() == Milestone.HALF
                    ? Texts.say("{0}: half are {1}", tray.code(), stages(tray))
                    : Texts.say("{0}: half are {1} already; 95 % are", tray.code(), stages(tray));
        }
        return Texts.say(
                "{0}: 95 % were {1} by {2}. No temperature changes that.",
                tray.code(),
                stages(tray),
                tray.last(Milestone.MOST).map(most -> days.day(most.p50())).orElse(""));
    }

    private String moved(
            double celsius, Foreseen tray, Milestone milestone, Instant middleBefore, InstantInterval after) {
        long wholeDays = Math.round(Duration.between(middleBefore, after.p50()).toMinutes() / MINUTES_PER_DAY);
        long apart = Math.abs(wholeDays);
        Object[] places = {
            Temperatures.words(celsius), tray.code(), stages(tray), apart, days.days(after.p10(), after.p90())
        };
        boolean isHalf = milestone == Milestone.HALF;
        if (wholeDays == 0) {
            return isHalf
                    ? Texts.say("At {0} half of {1} would be {2} on about the same day, {4}.", places)
                    : Texts.say("At {0} 95 % of {1} would be {2} on about the same day, {4}.", places);
        }
        if (wholeDays > 0) {
            return isHalf
                    ? Texts.count(
                            apart,
                            "At {0} half of {1} would be {2} {3} day later, {4}.",
                            "At {0} half of {1} would be {2} {3} days later, {4}.",
                            places)
                    : Texts.count(
                            apart,
                            "At {0} 95 % of {1} would be {2} {3} day later, {4}.",
                            "At {0} 95 % of {1} would be {2} {3} days later, {4}.",
                            places);
        }
        return isHalf
                ? Texts.count(
                        apart,
                        "At {0} half of {1} would be {2} {3} day earlier, {4}.",
                        "At {0} half of {1} would be {2} {3} days earlier, {4}.",
                        places)
                : Texts.count(
                        apart,
                        "At {0} 95 % of {1} would be {2} {3} day earlier, {4}.",
                        "At {0} 95 % of {1} would be {2} {3} days earlier, {4}.",
                        places);
    }

    private String stages(Foreseen tray) {
        return vocabulary.plural(tray.lastStage());
    }
}
