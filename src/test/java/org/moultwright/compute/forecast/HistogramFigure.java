package org.moultwright.compute.forecast;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;

/** Small histograms in rows of five, as SVG, each with the band that even counts keep to in 95 of 100 cases. */
record HistogramFigure(String title) {
    private static final int COLUMNS = 5;
    private static final double WIDTH = 150;
    private static final double HEIGHT = 90;
    private static final double GAP = 24;
    private static final double TOP = 44;

    /** The picture of histograms by name. */
    String of(Map<String, int[]> histograms) {
        int rows = (histograms.size() + COLUMNS - 1) / COLUMNS;
        StringBuilder svg = new StringBuilder(text(
                "<svg xmlns='http://www.w3.org/2000/svg' width='%.0f' height='%.0f' font-family='sans-serif'>%n"
                        + "<rect width='100%%' height='100%%' fill='#fff'/>%n<text x='%.0f' y='22' font-size='14'>%s</text>%n",
                GAP + COLUMNS * (WIDTH + GAP), TOP + rows * (HEIGHT + 2 * GAP), GAP, title));
        int index = 0;
        for (Map.Entry<String, int[]> histogram : histograms.entrySet()) {
            double left = GAP + index % COLUMNS * (WIDTH + GAP);
            int row = index / COLUMNS;
            double bottom = TOP + row * (HEIGHT + 2 * GAP) + HEIGHT;
            svg.append(bars(histogram.getValue(), left, bottom))
                    .append(text(
                            "<text x='%.1f' y='%.1f' font-size='11'>%s</text>%n",
                            left, bottom + 14, histogram.getKey()));
            index++;
        }
        return svg.append(text("</svg>%n")).toString();
    }

    private static String bars(int[] counts, double left, double bottom) {
        double even = Arrays.stream(counts).average().orElseThrow();
        double margin = 1.96 * Math.sqrt(even * (1 - 1.0 / counts.length));
        double unit =
                HEIGHT / Math.max(even + 2 * margin, Arrays.stream(counts).max().orElseThrow());
        double step = WIDTH / counts.length;
        StringBuilder bars = new StringBuilder(text(
                "<rect x='%.1f' y='%.1f' width='%.1f' height='%.1f' fill='#dfe6e9'/>%n",
                left, bottom - (even + margin) * unit, WIDTH, 2 * margin * unit));
        for (int i = 0; i < counts.length; i++) {
            bars.append(text(
                    "<rect x='%.1f' y='%.1f' width='%.1f' height='%.1f' fill='#2f6f73' fill-opacity='0.75'/>%n",
                    left + i * step + 1, bottom - counts[i] * unit, step - 2, counts[i] * unit));
        }
        return bars.toString();
    }

    private static String text(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
