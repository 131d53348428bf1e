package org.moultwright.ui.chart;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.moultwright.domain.RollUp;

/** Good readings in groups, in order of time, in columns. Never changed once it is built. */
final class PyramidLevel {
    private final long[] startMillis;
    private final long[] endMillis;
    private final double[] lows;
    private final double[] highs;
    private final double[] firsts;
    private final double[] lasts;
    private final double[] sums;
    private final int[] counts;
    /** Whether nothing may bridge from the group before it. */
    private final boolean[] afterGaps;

    private int size;

    private PyramidLevel(int most) {
        startMillis = new long[most];
        endMillis = new long[most];
        lows = new double[most];
        highs = new double[most];
        firsts = new double[most];
        lasts = new double[most];
        sums = new double[most];
        counts = new int[most];
        afterGaps = new boolean[most];
    }

    /** Every roll-up that holds a good reading as a group of its own. */
    static PyramidLevel of(List<RollUp> rollUps, Duration longestBridged) {
        PyramidLevel level = new PyramidLevel(rollUps.size());
        for (RollUp rollUp : rollUps) {
            if (rollUp.good() > 0) {
                level.add(rollUp, longestBridged);
            }
        }
        return level;
    }

    /** So many groups joined to one, none over a gap. */
    PyramidLevel grouped(int arity) {
        int gaps = 0;
        for (int i = 0; i < size; i++) {
            gaps += afterGaps[i] ? 1 : 0;
        }
        PyramidLevel joined = new PyramidLevel(size / arity + gaps + 1);
        int inGroup = arity;
        for (int i = 0; i < size; i++) {
            if (inGroup == arity || afterGaps[i]) {
                joined.begin(this, i);
                inGroup = 0;
            }
            joined.join(this, i);
            inGroup++;
        }
        return joined;
    }

    int size() {
        return size;
    }

    /** How many readings the groups that reach into a stretch hold. */
    int readingsWithin(long fromMillis, long toMillis) {
        int end = indexAtOrAfter(toMillis + 1);
        int readings = 0;
        for (int i = firstOverlapping(fromMillis); i < end; i++) {
            readings += counts[i];
        }
        return readings;
    }

    /** How many groups begin within a stretch. */
    int countWithin(long fromMillis, long toMillis) {
        return indexAtOrAfter(toMillis + 1) - indexAtOrAfter(fromMillis);
    }

    /** Lowest and highest of the groups that lie wholly within a stretch, and how far these reach. */
    Extremes extremes(long fromMillis, long toMillis) {
        int end = indexAtOrAfter(toMillis + 1);
        while (end > 0 && endMillis[end - 1] > toMillis) {
            end--;
        }
        return extremes(indexAtOrAfter(fromMillis), end);
    }

    /** The same of the groups that reach into a stretch. */
    Extremes touching(long fromMillis, long toMillis) {
        return extremes(firstOverlapping(fromMillis), indexAtOrAfter(toMillis + 1));
    }

    private Extremes extremes(int begin, int end) {
        Extremes found = Extremes.NOTHING;
        for (int i = begin; i < end; i++) {
            found = found.and(new Extremes(lows[i], highs[i], startMillis[i], endMillis[i]));
        }
        return found;
    }

    /** Silences longer than is bridged, one up to {@code until} included. */
    List<Envelope.Gap> gaps(Duration longestBridged, Instant until) {
        List<Envelope.Gap> gaps = new ArrayList<>();
        for (int i = 1; i < size; i++) {
            if (afterGaps[i]) {
                gaps.add(new Envelope.Gap(endMillis[i - 1], startMillis[i]));
            }
        }
        boolean endsInSilence = size > 0 && until.toEpochMilli() - endMillis[size - 1] > longestBridged.toMillis();
        if (endsInSilence) {
            gaps.add(new Envelope.Gap(endMillis[size - 1], until.toEpochMilli()));
        }
        return gaps;
    }

    /**
     * The groups of an axis's stretch, joined to one column a pixel; a pixel with a gap in it has two. A group wider
     * than a pixel is in each it reaches into.
     */
    List<Envelope.Column> columns(CalendarAxis axis) {
        long fromMillis = axis.from().toEpochMilli();
        long toMillis = axis.to().toEpochMilli();
        double pixelsPerMilli = (axis.right() - axis.left()) / (toMillis - fromMillis);
        PyramidLevel inPixel = new PyramidLevel(1);
        List<Envelope.Column> columns = new ArrayList<>();
        int pixel = Integer.MIN_VALUE;
        int lastPixel = (int) Math.ceil(axis.right() - axis.left());
        double widestMillis = 1 / pixelsPerMilli;
        int end = indexAtOrAfter(toMillis + 1);
        int first = firstOverlapping(fromMillis);
        for (int i = first; i < end; i++) {
            int at = Math.max(0, (int) Math.floor((startMillis[i] - fromMillis) * pixelsPerMilli));
            if (at != pixel || afterGaps[i]) {
                inPixel.flush(pixel, columns);
                inPixel.size = 0;
                inPixel.begin(this, i);
                pixel = at;
            }
            inPixel.join(this, i);
            if (endMillis[i] - startMillis[i] > widestMillis) {
                int reaches = Math.min(lastPixel, (int) Math.floor((endMillis[i] - fromMillis) * pixelsPerMilli));
                while (pixel < reaches) {
                    inPixel.flush(pixel, columns);
                    inPixel.size = 0;
                    inPixel.begin(this, i);
                    inPixel.afterGaps[0] = false;
                    inPixel.join(this, i);
                    pixel++;
                }
            }
        }
        inPixel.flush(pixel, columns);
        return columns;
    }

    /** The first group that reaches into the stretch, where it began before it. */
    private int firstOverlapping(long fromMillis) {
        int at = indexAtOrAfter(fromMillis);
        return at > 0 && endMillis[at - 1] >= fromMillis ? at - 1 : at;
    }

    private int indexAtOrAfter(long millis) {
        int found = Arrays.binarySearch(startMillis, 0, size, millis);
        return found >= 0 ? found : -found - 1;
    }

    private void add(RollUp rollUp, Duration longestBridged) {
        startMillis[size] = rollUp.firstMillis();
        endMillis[size] = rollUp.lastMillis();
        lows[size] = rollUp.lowCelsius();
        highs[size] = rollUp.highCelsius();
        firsts[size] = rollUp.firstCelsius();
        lasts[size] = rollUp.lastCelsius();
        sums[size] = rollUp.good() * rollUp.meanCelsius();
        counts[size] = rollUp.good();
        afterGaps[size] = size > 0 && startMillis[size] - endMillis[size - 1] > longestBridged.toMillis();
        size++;
    }

    private void begin(PyramidLevel from, int index) {
        startMillis[size] = from.startMillis[index];
        lows[size] = Double.POSITIVE_INFINITY;
        highs[size] = Double.NEGATIVE_INFINITY;
        firsts[size] = from.firsts[index];
        sums[size] = 0;
        counts[size] = 0;
        afterGaps[size] = from.afterGaps[index];
        size++;
    }

    private void join(PyramidLevel from, int index) {
        int at = size - 1;
        endMillis[at] = from.endMillis[index];
        lows[at] = Math.min(lows[at], from.lows[index]);
        highs[at] = Math.max(highs[at], from.highs[index]);
        lasts[at] = from.lasts[index];
        sums[at] += from.sums[index];
        counts[at] += from.counts[index];
    }

    private void flush(int pixel, List<Envelope.Column> columns) {
        if (size > 0) {
            columns.add(new Envelope.Column(
                    pixel, lows[0], highs[0], firsts[0], lasts[0], sums[0] / counts[0], afterGaps[0]));
        }
    }

    /** Lowest and highest values of a stretch. */
    record Extremes(double low, double high, long fromMillis, long toMillis) {
        static final Extremes NOTHING =
                new Extremes(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Long.MAX_VALUE, Long.MIN_VALUE);

        boolean isNothing() {
            return low > high;
        }

        Extremes and(Extremes other) {
            return new Extremes(
                    Math.min(low, other.low),
                    Math.max(high, other.high),
                    Math.min(fromMillis, other.fromMillis),
                    Math.max(toMillis, other.toMillis));
        }
    }
}
