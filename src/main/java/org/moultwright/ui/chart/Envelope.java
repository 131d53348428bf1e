package org.moultwright.ui.chart;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;

/**
 * Readings thinned to one column a pixel, and the gaps between them.
 *
 * <p>Each column keeps the lowest, highest, first and last value in it, so that no spike is lost however long
 * the time shown. Only good readings count. The work grows with the readings, the result with the pixels.
 *
 * @param columns those that hold any reading, from left to right
 * @param gaps stretches without a good reading longer than the limit given
 */
record Envelope(List<Column> columns, List<Gap> gaps) {
    Envelope {
        columns = List.copyOf(columns);
        gaps = List.copyOf(gaps);
    }

    static Envelope of(ReadingSeries readings, CalendarAxis axis, Duration longestBridged) {
        List<Column> columns = new ArrayList<>();
        List<Gap> gaps = new ArrayList<>();
        Gathering column = new Gathering();
        long fromMillis = axis.from().toEpochMilli();
        double pixelsPerMilli = (axis.right() - axis.left()) / (axis.to().toEpochMilli() - fromMillis);
        long previousMillis = Long.MIN_VALUE;
        for (int i = 0; i < readings.size(); i++) {
            if (readings.quality(i) != Quality.GOOD) {
                continue;
            }
            long millis = readings.epochMillis(i);
            int pixel = (int) Math.floor((millis - fromMillis) * pixelsPerMilli);
            boolean afterGap = previousMillis != Long.MIN_VALUE && millis - previousMillis > longestBridged.toMillis();
            if (afterGap) {
                gaps.add(new Gap(previousMillis, millis));
            }
            if (column.isEmpty() || column.pixel != pixel || afterGap) {
                column.flushTo(columns);
                column.begin(pixel, afterGap);
            }
            column.add(readings.temperatureCelsius(i));
            previousMillis = millis;
        }
        column.flushTo(columns);
        return new Envelope(columns, gaps);
    }

    /**
     * The readings of one pixel's width.
     *
     * @param pixel counted from the axis's left
     * @param afterGap whether a gap lies before it, which nothing may bridge
     */
    record Column(int pixel, double low, double high, double first, double last, double mean, boolean afterGap) {}

    /** From the last good reading before a silence to the first after it. */
    record Gap(long fromEpochMillis, long toEpochMillis) {}

    private static final class Gathering {
        private int pixel;
        private boolean afterGap;
        private int count;
        private double low;
        private double high;
        private double first;
        private double last;
        private double sum;

        boolean isEmpty() {
            return count == 0;
        }

        void begin(int atPixel, boolean behindGap) {
            pixel = atPixel;
            afterGap = behindGap;
            count = 0;
            low = Double.POSITIVE_INFINITY;
            high = Double.NEGATIVE_INFINITY;
            sum = 0;
        }

        void add(double value) {
            if (count == 0) {
                first = value;
            }
            low = Math.min(low, value);
            high = Math.max(high, value);
            last = value;
            sum += value;
            count++;
        }

        void flushTo(List<Column> columns) {
            if (count > 0) {
                columns.add(new Column(pixel, low, high, first, last, sum / count, afterGap));
            }
        }
    }
}
