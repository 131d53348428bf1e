package org.moultwright.compute.stage;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Where parameters drawn from a prior rank among the draws of the posterior of data made from them: evenly
 * everywhere, if the posterior is right (Talts et al. 2018).
 */
public final class SimulatedRanks {
    public static final int BINS = 10;
    public static final int REPEATS = 150;
    private static final int DRAWS = 400;

    private static final StagePrior PRIOR = new StagePrior(
            new NormalBelief(
                    new double[] {Math.log(30), Math.log(46)}, new double[][] {{0.012, 0.010}, {0.010, 0.011}}),
            NormalBelief.alike(2, Math.log(0.065), 0.36, 0.17),
            NormalBelief.alike(2, -3.5, 0.3, 0.6),
            0.025,
            0.25);

    private SimulatedRanks() {}

    /** The ranks as histograms of {@link #BINS} bins, by quantity, the last look being at an age in warm-days. */
    public static Map<String, int[]> histograms(double untilAge) {
        Map<String, ToDoubleFunction<StageParameters>> quantities = new LinkedHashMap<>();
        quantities.put("first median", truth -> truth.logMedian()[0]);
        quantities.put("second median", truth -> truth.logMedian()[1]);
        quantities.put("second spread", truth -> truth.logSpread()[1]);
        quantities.put("first never", truth -> truth.neverLogit()[0]);
        quantities.put("tray", truth -> truth.trayShift()[0]);
        Map<String, int[]> histograms = new LinkedHashMap<>();
        Chance chance = new Chance(20_261_125);
        for (int repeat = 0; repeat < REPEATS; repeat++) {
            InventedEvidence invented = InventedEvidence.of(PRIOR, 2, 40, untilAge, chance);
            PosteriorDraws draws = PosteriorDraws.of(invented.trays(), PRIOR, DRAWS, repeat);
            quantities.forEach((name, quantity) -> {
                double truth = quantity.applyAsDouble(invented.truth());
                long below = draws.draws().stream()
                        .filter(draw -> quantity.applyAsDouble(draw) < truth)
                        .count();
                histograms
                        .computeIfAbsent(name, unseen -> new int[BINS])[
                        (int) Math.min(BINS - 1, below * BINS / DRAWS)]++;
            });
        }
        return histograms;
    }
}
