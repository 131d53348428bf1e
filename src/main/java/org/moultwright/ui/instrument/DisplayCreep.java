package org.moultwright.ui.instrument;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.moultwright.compute.agreement.AverageChart;

/**
 * A display that has crept away from its probe, or the probe from the display.
 *
 * @param since the comparison from which on it shows
 * @param firstCelsius display less probe on average, over the comparisons of the beginning
 * @param latelyCelsius the same, weighted towards the latest
 */
record DisplayCreep(DisplayPair since, double firstCelsius, double latelyCelsius) {
    /** What is found in all comparisons of a display: the first ones tell how it began. */
    static Optional<DisplayCreep> in(List<DisplayPair> pairs) {
        if (pairs.size() <= DisplayWords.ENOUGH_PAIRS) {
            return Optional.empty();
        }
        List<DisplayPair> inTime = pairs.stream()
                .sorted(Comparator.comparing(pair -> pair.note().at()))
                .toList();
        List<DisplayPair> later = inTime.subList(DisplayWords.ENOUGH_PAIRS, inTime.size());
        AverageChart chart =
                AverageChart.after(differences(inTime.subList(0, DisplayWords.ENOUGH_PAIRS)), lastDigitSd(inTime));
        double[] averages = chart.averages(differences(later));
        OptionalInt since = chart.beyondSince(averages);
        return since.isPresent()
                ? Optional.of(
                        new DisplayCreep(later.get(since.getAsInt()), chart.centre(), averages[averages.length - 1]))
                : Optional.empty();
    }

    /** A digit that is rounded spreads evenly over its step (JCGM 100:2008, F.2.2.1). */
    private static double lastDigitSd(List<DisplayPair> pairs) {
        return pairs.stream()
                        .mapToDouble(pair -> pair.note().stepCelsius())
                        .max()
                        .orElseThrow()
                / Math.sqrt(12);
    }

    private static double[] differences(List<DisplayPair> pairs) {
        return pairs.stream().mapToDouble(pair -> pair.check().difference()).toArray();
    }
}
