package org.moultwright.compute.forecast;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.moultwright.compute.stage.SimulatedRanks;

/**
 * Draws the figures of {@code docs/methods/estimate.md}: arguments are the directory to write to, keepers, and a
 * seed. Each figure is a row of histograms that are even, within the shaded band, where the estimate is calibrated.
 */
public final class CalibrationFigures {
    private static final int BROODS_EACH = 5;

    private CalibrationFigures() {}

    public static void main(String[] arguments) throws IOException {
        Path directory = Path.of(arguments[0]);
        int keepers = Integer.parseInt(arguments[1]);
        long seed = Long.parseLong(arguments[2]);
        Map<String, int[]> ranks = new LinkedHashMap<>();
        for (double until : new double[] {44, 75}) {
            SimulatedRanks.histograms(until)
                    .forEach((name, histogram) -> ranks.put("%s, %.0f".formatted(name, until), histogram));
        }
        Files.writeString(
                directory.resolve("ranks.svg"),
                new HistogramFigure("Ranks of invented truths among posterior draws; last look at 44 or 75 warm-days")
                        .of(ranks));
        for (double variation : new double[] {1, 1.8}) {
            Files.writeString(
                    directory.resolve("outcomes-%s.svg".formatted(variation)),
                    new HistogramFigure("Probability forecast by when it happened; broods varying %s times as usual"
                                    .formatted(variation))
                            .of(outcomes(
                                    BackTest.run(TriedKeeper.Simulator.FIRST, keepers, BROODS_EACH, variation, seed))));
        }
    }

    private static Map<String, int[]> outcomes(BackTest test) {
        Map<String, int[]> outcomes = new LinkedHashMap<>();
        for (Milestone milestone : Milestone.values()) {
            for (double share : BackTest.SHARES) {
                outcomes.put(
                        "%s at %.0f %%".formatted(milestone.key(), 100 * share),
                        histogram(test.at(share).probabilities(milestone)));
            }
        }
        return outcomes;
    }

    private static int[] histogram(List<Double> probabilities) {
        int[] counts = new int[SimulatedRanks.BINS];
        probabilities.forEach(probability -> counts[(int) Math.min(counts.length - 1, probability * counts.length)]++);
        return counts;
    }
}
