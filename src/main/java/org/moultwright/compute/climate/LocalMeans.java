package org.moultwright.compute.climate;

import java.util.Arrays;
import java.util.Map;
import java.util.OptionalDouble;

/** Means over the quarter-hours near one, of those that were measured. Immutable. */
final class LocalMeans {
    private final long[] quarters;
    private final double[] sumBefore;

    LocalMeans(Map<Long, Mean> byQuarter) {
        this.quarters =
                byQuarter.keySet().stream().mapToLong(Long::longValue).sorted().toArray();
        this.sumBefore = new double[quarters.length + 1];
        for (int i = 0; i < quarters.length; i++) {
            Mean mean = byQuarter.get(quarters[i]);
            sumBefore[i + 1] = sumBefore[i] + (mean == null ? 0 : mean.value());
        }
    }

    /** The mean of all within so many quarter-hours before and after one, empty if none was measured. */
    OptionalDouble within(long quarter, int atMostAway) {
        int first = firstAtOrAfter(quarter - atMostAway);
        int end = firstAtOrAfter(quarter + atMostAway + 1);
        return end > first
                ? OptionalDouble.of((sumBefore[end] - sumBefore[first]) / (end - first))
                : OptionalDouble.empty();
    }

    private int firstAtOrAfter(long quarter) {
        int found = Arrays.binarySearch(quarters, quarter);
        return found >= 0 ? found : -found - 1;
    }
}
