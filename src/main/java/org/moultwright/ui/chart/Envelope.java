package org.moultwright.ui.chart;

import java.util.List;

/**
 * Readings thinned to one column a pixel, and the gaps between them.
 *
 * <p>Each column keeps the lowest, highest, first and last value in it, so that no spike is lost however long
 * the time shown. Only good readings count.
 *
 * @param columns those that hold any reading, from left to right
 * @param gaps stretches without a good reading longer than the limit given
 */
record Envelope(List<Column> columns, List<Gap> gaps) {
    Envelope {
        columns = List.copyOf(columns);
        gaps = List.copyOf(gaps);
    }

    /** Whether any reading between these pixels, counted from the axis's left, lies in this span of temperatures. */
    boolean reaches(double fromPixel, double toPixel, double lowCelsius, double highCelsius) {
        return columns.stream()
                .filter(column -> column.pixel() >= fromPixel && column.pixel() <= toPixel)
                .anyMatch(column -> column.high() >= lowCelsius && column.low() <= highCelsius);
    }

    /**
     * The readings of one pixel's width.
     *
     * @param pixel counted from the axis's left
     * @param afterGap whether a gap lies before it, which nothing may bridge
     */
    record Column(int pixel, double low, double high, double first, double last, double mean, boolean afterGap) {}

    /** From the last good reading before a silence to the first after it, or to where readings were looked for. */
    record Gap(long fromEpochMillis, long toEpochMillis) {}
}
