package org.moultwright.ui.climate;

import java.time.Instant;
import java.util.Locale;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.text.DayWords;
import org.moultwright.ui.chart.Trace;
import org.moultwright.ui.chart.TraceChart;

/** A whole trace in words. */
final class TraceWords {
    private TraceWords() {}

    /** "Sunday 3 May, 18:20: 27.1 °C". */
    static String at(Trace trace, Instant instant, DayWords days) {
        String value = TraceChart.nearest(trace, instant)
                .map(i -> String.format(Locale.ROOT, "%.1f °C", trace.readings().temperatureCelsius(i)))
                .orElse("no reading");
        return days.longDay(instant) + ", " + days.clock(instant) + ": " + value;
    }

    static String whole(Trace trace) {
        ReadingSeries readings = trace.readings();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        int good = 0;
        for (int i = 0; i < readings.size(); i++) {
            if (readings.quality(i) == Quality.GOOD) {
                low = Math.min(low, readings.temperatureCelsius(i));
                high = Math.max(high, readings.temperatureCelsius(i));
                good++;
            }
        }
        if (good == 0) {
            return "No good reading in this time.";
        }
        String band = trace.target()
                .map(target -> String.format(
                        Locale.ROOT, " · band %.0f to %.0f °C", target.lowCelsius(), target.highCelsius()))
                .orElse("");
        return String.format(
                Locale.ROOT,
                "lowest %.1f, highest %.1f °C, %,d good readings%s · shade = lowest to highest, hatched = silent",
                low,
                high,
                good,
                band);
    }
}
