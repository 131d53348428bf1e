package org.moultwright.ui.chart;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.RollUp;

/**
 * Readings, rolled up or each for itself, thinned to one column a pixel, and the gaps between them.
 *
 * <p>Each column keeps the lowest, highest, first and last value in it, so that no spike is lost however long
 * the time shown. Only good readings count. The work grows with the roll-ups, the result with the pixels.
 *
 * @param columns those that hold any reading, from left to right
 * @param gaps stretches without a good reading longer than the limit given
 */
record Envelope(List<Column> columns, List<Gap> gaps) {
    Envelope {
        columns = List.copyOf(columns);
        gaps = List.copyOf(gaps);
    }

    /** @param rollUps in order of time; those that begin before the axis are drawn where it begins */
    static Envelope of(List<RollUp> rollUps, CalendarAxis axis, Duration longestBridged) {
        List<Column> columns = new ArrayList<>();
        List<Gap> gaps = new ArrayList<>();
        Gathering column = new Gathering();
        long fromMillis = axis.from().toEpochMilli();
        double pixelsPerMilli = (axis.right() - axis.left()) / (axis.to().toEpochMilli() - fromMillis);
        long previousMillis = Long.MIN_VALUE;
        for (RollUp rollUp : rollUps) {
            if (rollUp.good() == 0) {
                continue;
            }
            long millis = Math.max(fromMillis, rollUp.firstMillis());
            int pixel = (int) Math.floor((millis - fromMillis) * pixelsPerMilli);
            boolean afterGap = previousMillis != Long.MIN_VALUE
                    && rollUp.firstMillis() - previousMillis > longestBridged.toMillis();
            if (afterGap) {
                gaps.add(new Gap(previousMillis, rollUp.firstMillis()));
            }
            if (column.isEmpty() || column.pixel != pixel || afterGap) {
                column.flushTo(columns);
                column.begin(pixel, afterGap);
            }
            column.add(rollUp);
            previousMillis = rollUp.lastMillis();
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
        private Optional<RollUp> gathered = Optional.empty();

        boolean isEmpty() {
            return gathered.isEmpty();
        }

        void begin(int atPixel, boolean behindGap) {
            pixel = atPixel;
            afterGap = behindGap;
            gathered = Optional.empty();
        }

        void add(RollUp rollUp) {
            gathered = Optional.of(gathered.map(before -> before.with(rollUp)).orElse(rollUp));
        }

        void flushTo(List<Column> columns) {
            gathered.ifPresent(whole -> columns.add(new Column(
                    pixel,
                    whole.lowCelsius(),
                    whole.highCelsius(),
                    whole.firstCelsius(),
                    whole.lastCelsius(),
                    whole.meanCelsius(),
                    afterGap)));
        }
    }
}
