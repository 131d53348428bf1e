package org.moultwright.ui.chart;

import java.util.List;
import java.util.stream.LongStream;
import org.moultwright.domain.Require;
import org.moultwright.language.Scale;

/**
 * Numbers laid along a line of pixels from the bottom up; from the left, where its bottom is the left end.
 *
 * @param low the number at {@code bottom}
 * @param high the number at {@code top}, above {@code low}
 * @param top in pixels
 * @param bottom in pixels
 */
record ValueAxis(double low, double high, double top, double bottom) {
    private static final List<Double> STEPS = List.of(0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0);

    ValueAxis {
        Require.that(high > low, "high " + high + " is not above low " + low);
    }

    /** The same axis in the numbers that are shown, for its ticks to be round. */
    ValueAxis in(Scale scale) {
        return new ValueAxis(scale.shown(low), scale.shown(high), top, bottom);
    }

    double y(double value) {
        return bottom - (bottom - top) * (value - low) / (high - low);
    }

    /** The number at a pixel. */
    double value(double y) {
        return low + (high - low) * (bottom - y) / (bottom - top);
    }

    /** The multiples of the finest round step that leaves each so much room. */
    double[] ticks(double roomPixels) {
        double pixelsPerUnit = Math.abs(bottom - top) / (high - low);
        double step = STEPS.stream()
                .filter(candidate -> candidate * pixelsPerUnit >= roomPixels)
                .findFirst()
                .orElse(50.0);
        long first = Math.round(Math.ceil(low / step - 1e-9));
        long last = Math.round(Math.floor(high / step + 1e-9));
        return LongStream.rangeClosed(first, last).mapToDouble(i -> i * step).toArray();
    }
}
