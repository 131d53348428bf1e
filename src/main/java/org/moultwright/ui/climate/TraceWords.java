package org.moultwright.ui.climate;

import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import org.moultwright.domain.RollUp;
import org.moultwright.text.DayWords;
import org.moultwright.ui.chart.Trace;
import org.moultwright.ui.chart.TraceChart;

/** A whole trace in words. */
final class TraceWords {
    private TraceWords() {}

    /** "Sunday 3 May, 18:20: 27.1 °C"; of a coarser roll-up "27.1 °C (26.8 to 27.3)". */
    static String at(Trace trace, Instant instant, DayWords days) {
        String value = TraceChart.nearest(trace, instant).map(TraceWords::value).orElse("no reading");
        return days.longDay(instant) + ", " + days.clock(instant) + ": " + value;
    }

    static String whole(Trace trace) {
        Optional<RollUp> whole = trace.rollUps().stream().reduce(RollUp::with).filter(rollUp -> rollUp.good() > 0);
        String band = trace.target()
                .map(target -> String.format(
                        Locale.ROOT, " · band %.0f to %.0f °C", target.lowCelsius(), target.highCelsius()))
                .orElse("");
        return whole.map(all -> String.format(
                        Locale.ROOT,
                        "lowest %.1f, highest %.1f °C, %,d good readings%s · shade = lowest to highest, hatched = silent",
                        all.lowCelsius(),
                        all.highCelsius(),
                        all.good(),
                        band))
                .orElse("No good reading in this time.");
    }

    /** The mean, and from where to where where that is more. */
    private static String value(RollUp rollUp) {
        String mean = tenths(rollUp.meanCelsius());
        String low = tenths(rollUp.lowCelsius());
        String high = tenths(rollUp.highCelsius());
        return low.equals(high) ? mean + " °C" : "%s °C (%s to %s)".formatted(mean, low, high);
    }

    private static String tenths(double celsius) {
        return String.format(Locale.ROOT, "%.1f", celsius);
    }
}
