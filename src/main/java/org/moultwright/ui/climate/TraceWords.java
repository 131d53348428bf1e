package org.moultwright.ui.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.moultwright.text.DayWords;
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
        return trace.line()
                        .readings()
                        .range(trace.from(), trace.to())
                        .map(range -> String.format(
                                Locale.ROOT,
                                "lowest %.1f, highest %.1f °C%s%s · shade = lowest to highest, hatched = silent",
                                range.low(),
                                range.high(),
                                readings(trace.line(), range.good()),
                                band(trace)))
                        .orElse("No good reading in this time.")
                + (trace.remembered().isEmpty() ? "" : " · frame = thermometer");
    }

    /** "24 April to 4 May"; by the clock where it is short, with years where it is long. */
    static String stretch(TraceWindow window, DayWords days) {
        if (window.length().compareTo(LONGEST_BY_THE_CLOCK) <= 0) {
            return "%s, %s to %s".formatted(days.day(window.to()), days.clock(window.from()), days.clock(window.to()));
        }
        return window.length().compareTo(LONGEST_WITHOUT_A_YEAR) <= 0
                ? days.days(window.from(), window.to())
                : "%s %d to %s %d"
                        .formatted(
                                days.day(window.from()),
                                days.date(window.from()).getYear(),
                                days.day(window.to()),
                                days.date(window.to()).getYear());
    }

    private static String remembered(Trace trace, Instant instant) {
        return trace.remembered().stream()
                .filter(known -> known.holds(instant))
                .map(known -> String.format(
                        Locale.ROOT, "; a thermometer %.1f to %.1f °C", known.lowCelsius(), known.highCelsius()))
                .collect(Collectors.joining());
    }

    private static String readings(Trace.Line line, int good) {
        return String.format(
                Locale.ROOT, line.isRolledUp() ? ", about %,d good readings" : ", %,d good readings", good);
    }

    private static String band(Trace trace) {
        return trace.target()
                .map(target -> String.format(
                        Locale.ROOT, " · band %.0f to %.0f °C", target.lowCelsius(), target.highCelsius()))
                .orElse("");
    }

    private static String value(Trace.Line line, Trace trace, Instant instant) {
        return TraceChart.nearest(line, trace.longestBridged(), instant)
                .map(i -> String.format(
                        Locale.ROOT, "%.1f °C", line.readings().readings().temperatureCelsius(i)))
                .orElse("no reading");
    }
}
