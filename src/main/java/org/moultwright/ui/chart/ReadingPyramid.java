package org.moultwright.ui.chart;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.RollUp;
import org.moultwright.domain.RollUps;

/**
 * Good readings, or roll-ups of them, grouped by eights, these groups by eights again, and so on: any stretch of them is thinned to the
 * pixels it is drawn in with work that grows with the pixels and not with the readings.
 *
 * <p>Each group keeps the lowest and highest, first and last value in it; no group reaches over a gap. A group
 * narrower than a pixel is drawn where it begins, at most a fraction of a pixel off. Immutable.
 */
public final class ReadingPyramid {
    public static final ReadingPyramid EMPTY = of(List.of(), Duration.ofDays(1), Instant.EPOCH);

    /** Groups of the level used are at least so many to a pixel, unless single readings are fewer. */
    private static final int GROUPS_PER_PIXEL = 2;

    private static final int ARITY = 8;

    /** The level by which the range of a long stretch is found. */
    private static final int COARSE = 3;

    private final ReadingSeries readings;
    private final List<PyramidLevel> levels;
    private final List<Envelope.Gap> gaps;

    private ReadingPyramid(ReadingSeries readings, List<PyramidLevel> levels, List<Envelope.Gap> gaps) {
        this.readings = readings;
        this.levels = List.copyOf(levels);
        this.gaps = List.copyOf(gaps);
    }

    /**
     * Groups roll-ups, which may be of one reading each.
     *
     * @param longestBridged a longer time without a good reading is a gap
     * @param until how far readings were looked for: a silence up to there is a gap as well
     */
    public static ReadingPyramid of(List<RollUp> rollUps, Duration longestBridged, Instant until) {
        PyramidLevel level = PyramidLevel.of(rollUps, longestBridged);
        List<Envelope.Gap> gaps = level.gaps(longestBridged, until);
        List<PyramidLevel> levels = new ArrayList<>(List.of(level));
        while (level.size() > ARITY) {
            PyramidLevel next = level.grouped(ARITY);
            if (next.size() > level.size() / 2) {
                // So many gaps that nothing can be joined any more.
                break;
            }
            level = next;
            levels.add(level);
        }
        return new ReadingPyramid(RollUps.outline(rollUps), levels, gaps);
    }

    /** The good readings; of roll-ups those that look as they do. */
    public ReadingSeries readings() {
        return readings;
    }

    /** The stretch of the axis, one column a pixel. */
    Envelope envelope(CalendarAxis axis) {
        long from = axis.from().toEpochMilli();
        long to = axis.to().toEpochMilli();
        int enough = GROUPS_PER_PIXEL * (int) Math.ceil(axis.right() - axis.left());
        PyramidLevel used = levels.get(0);
        for (PyramidLevel level : levels) {
            if (level.countWithin(from, to) < enough) {
                break;
            }
            used = level;
        }
        List<Envelope.Gap> within = gaps.stream()
                .filter(gap -> gap.toEpochMillis() > from && gap.fromEpochMillis() < to)
                .toList();
        return new Envelope(used.columns(axis), within);
    }

    /**
     * Lowest and highest good value of a stretch, and how many there are; empty if there is none. Of roll-ups those that
     * reach into it count whole.
     */
    public Optional<Range> range(Instant from, Instant to) {
        long fromMillis = from.toEpochMilli();
        long toMillis = to.toEpochMilli();
        PyramidLevel fine = levels.get(0);
        int good = fine.readingsWithin(fromMillis, toMillis);
        if (good == 0) {
            return Optional.empty();
        }
        PyramidLevel coarse = levels.get(Math.min(COARSE, levels.size() - 1));
        PyramidLevel.Extremes found = coarse.extremes(fromMillis, toMillis);
        if (found.isNothing()) {
            found = fine.touching(fromMillis, toMillis);
        } else {
            found = found.and(fine.touching(fromMillis, found.fromMillis() - 1))
                    .and(fine.touching(found.toMillis() + 1, toMillis));
        }
        return Optional.of(new Range(found.low(), found.high(), good));
    }

    /** What good readings ranged over. */
    public record Range(double low, double high, int good) {}

    @Override
    public String toString() {
        return "ReadingPyramid"
                + Arrays.toString(levels.stream().mapToInt(PyramidLevel::size).toArray());
    }
}
