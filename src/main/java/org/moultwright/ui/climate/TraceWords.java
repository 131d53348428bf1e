package org.moultwright.ui.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.moultwright.language.Degrees;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.ui.chart.ReadingPyramid;
import org.moultwright.ui.chart.Trace;
import org.moultwright.ui.chart.TraceChart;
import org.moultwright.ui.chart.TraceWindow;

/** A whole trace in words. */
final class TraceWords {
    private static final Duration LONGEST_BY_THE_CLOCK = Duration.ofHours(12);
    private static final Duration LONGEST_WITHOUT_A_YEAR = Duration.ofDays(300);

    private TraceWords() {}

    /** "Sunday 3 May, 18:20: 27.1 °C"; with others, each by its name. */
    static String at(Trace trace, Instant instant, DayWords days) {
        String value = trace.others().isEmpty()
                ? value(trace.line(), trace, instant)
                : Stream.concat(Stream.of(trace.line()), trace.others().stream())
                        .map(line -> line.name() + " " + value(line, trace, instant))
                        .collect(Collectors.joining(", "));
        return days.longDay(instant) + ", " + days.clock(instant) + ": " + value + remembered(trace, instant);
    }

    static String whole(Trace trace) {
        List<String> parts = new ArrayList<>();
        trace.line()
                .readings()
                .range(trace.from(), trace.to())
                .ifPresentOrElse(
                        range -> {
                            parts.add(measured(trace.line(), range));
                            trace.target()
                                    .ifPresent(target -> parts.add(Texts.say(
                                            "band {0} to {1}",
                                            Degrees.number(target.lowCelsius(), 0),
                                            Degrees.words(target.highCelsius(), 0))));
                            parts.add(Texts.say("shade = lowest to highest, hatched = silent"));
                        },
                        () -> parts.add(Texts.say("No good reading in this time.")));
        if (!trace.remembered().isEmpty()) {
            parts.add(Texts.say("frame = thermometer"));
        }
        return String.join(" · ", parts);
    }

    private static String measured(Trace.Line line, ReadingPyramid.Range range) {
        String low = Degrees.number(range.low(), 1);
        String high = Degrees.words(range.high(), 1);
        String good = Numbers.grouped(range.good());
        return line.isRolledUp()
                ? Texts.say("lowest {0}, highest {1}, about {2} good readings", low, high, good)
                : Texts.say("lowest {0}, highest {1}, {2} good readings", low, high, good);
    }

    /** "24 April to 4 May"; by the clock where it is short, with years where it is long. */
    static String stretch(TraceWindow window, DayWords days) {
        if (window.length().compareTo(LONGEST_BY_THE_CLOCK) <= 0) {
            return Texts.say(
                    "{0}, {1} to {2}", days.day(window.to()), days.clock(window.from()), days.clock(window.to()));
        }
        return window.length().compareTo(LONGEST_WITHOUT_A_YEAR) <= 0
                ? days.days(window.from(), window.to())
                : Texts.say(
                        "{0} {1} to {2} {3}",
                        days.day(window.from()),
                        days.date(window.from()).getYear(),
                        days.day(window.to()),
                        days.date(window.to()).getYear());
    }

    private static String remembered(Trace trace, Instant instant) {
        return trace.remembered().stream()
                .filter(known -> known.holds(instant))
                .map(known -> "; "
                        + Texts.say(
                                "a thermometer {0} to {1}",
                                Degrees.number(known.lowCelsius(), 1), Degrees.words(known.highCelsius(), 1)))
                .collect(Collectors.joining());
    }

    private static String value(Trace.Line line, Trace trace, Instant instant) {
        return TraceChart.nearest(line, trace.longestBridged(), instant)
                .map(i -> Degrees.words(line.readings().readings().temperatureCelsius(i), 1))
                .orElse(Texts.say("no reading"));
    }
}
