package org.moultwright.ui.chart;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;

/**
 * A ribbon's days in words.
 *
 * @param vocabulary the names of the stages
 * @param days the keeper's days
 */
public record RibbonWords(Vocabulary vocabulary, DayWords days) {

    /**
     * "Monday 20 April: 107 alive, 56 nymphs, 51 eggs with legs; 11 lost": how the day ended. A day on which nothing was
     * written names the one it is known from.
     */
    public String day(Ribbon ribbon, Instant day) {
        LocalDate date = days.date(day);
        return days.longDay(day) + ": "
                + ribbon.atEnd(start(date), start(date.plusDays(1)))
                        .map(point ->
                                point.isExpected() || days.date(point.at()).equals(date)
                                        ? point(point)
                                        : Texts.say("as written on {0}, {1}", days.day(point.at()), point(point)))
                        .or(() -> ribbon.thoughtInside(day)
                                .map(stage ->
                                        Texts.say("in the sac, most are thought to be {0}", vocabulary.plural(stage))))
                        .orElse(Texts.say("not opened yet"));
    }

    private Instant start(LocalDate date) {
        return date.atStartOfDay(days.zone()).toInstant();
    }

    private String point(Ribbon.Point point) {
        List<String> parts = new ArrayList<>();
        parts.add(alive(point));
        for (Map.Entry<Stage, Double> entry : point.living().entrySet()) {
            long count = Math.round(entry.getValue());
            if (count > 0) {
                Stage stage = entry.getKey();
                parts.add(count + " " + (count == 1 ? singular(stage) : vocabulary.plural(stage)));
            }
        }
        String words = String.join(", ", parts);
        long potted = Math.round(point.potted());
        long lost = Math.round(point.lost());
        if (potted > 0) {
            return lost > 0
                    ? Texts.say("{0}; {1} potted; {2} lost", words, potted, lost)
                    : Texts.say("{0}; {1} potted", words, potted);
        }
        return lost > 0 ? Texts.say("{0}; {1} lost", words, lost) : words;
    }

    private static String alive(Ribbon.Point point) {
        if (!point.isExpected()) {
            return Texts.say("{0} alive", Math.round(point.alive()));
        }
        long low = Math.round(point.aliveLow());
        long high = Math.round(point.aliveHigh());
        return low == high ? Texts.say("expected {0} alive", low) : Texts.say("expected {0} to {1} alive", low, high);
    }

    private String singular(Stage stage) {
        return vocabulary.singular(stage);
    }
}
