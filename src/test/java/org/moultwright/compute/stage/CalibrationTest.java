package org.moultwright.compute.stage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/**
 * Simulation-based calibration (Talts et al. 2018): parameters drawn from the prior rank evenly among the draws
 * of the posterior of data made from them.
 */
class CalibrationTest {
    private static final int REPEATS = 150;
    private static final int BINS = 10;

    /** 99.9 % point of χ² with 9 degrees of freedom. */
    private static final double UNEVEN = 27.88;

    private static final StagePrior PRIOR = new StagePrior(
            new NormalBelief(
                    new double[] {Math.log(30), Math.log(46)}, new double[][] {{0.012, 0.010}, {0.010, 0.011}}),
            NormalBelief.alike(2, Math.log(0.065), 0.36, 0.17),
            NormalBelief.alike(2, -3.5, 0.3, 0.6),
            0.025,
            0.25);

    @Test
    void truthsRankEvenlyWhileAMoultIsInProgress() {
        assertEven(44);
    }

    @Test
    void truthsRankEvenlyWhenAllIsSeen() {
        assertEven(75);
    }

    private static void assertEven(double untilAge) {
        rankings(untilAge)
                .forEach((name, ranks) -> assertThat(chiSquare(ranks))
                        .as("%s until %s warm-days: %s", name, untilAge, histogram(ranks))
                        .isLessThan(UNEVEN));
    }

    static Map<String, List<Double>> rankings(double untilAge) {
        Map<String, ToDoubleFunction<StageParameters>> quantities = new LinkedHashMap<>();
        quantities.put("first median", truth -> truth.logMedian()[0]);
        quantities.put("second median", truth -> truth.logMedian()[1]);
        quantities.put("second spread", truth -> truth.logSpread()[1]);
        quantities.put("first never", truth -> truth.neverLogit()[0]);
        quantities.put("tray", truth -> truth.trayShift()[0]);
        Map<String, List<Double>> ranks = new LinkedHashMap<>();
        Chance chance = new Chance(20_261_125);
        for (int repeat = 0; repeat < REPEATS; repeat++) {
            InventedEvidence invented = InventedEvidence.of(PRIOR, 2, 40, untilAge, chance);
            PosteriorDraws draws = PosteriorDraws.of(invented.trays(), PRIOR, 400, repeat);
            quantities.forEach((name, quantity) -> ranks.computeIfAbsent(name, unseen -> new ArrayList<>())
                    .add(draws.draws().stream()
                                    .filter(draw ->
                                            quantity.applyAsDouble(draw) < quantity.applyAsDouble(invented.truth()))
                                    .count()
                            / 400.0));
        }
        return ranks;
    }

    private static double chiSquare(List<Double> ranks) {
        double expected = (double) ranks.size() / BINS;
        double sum = 0;
        for (int count : histogram(ranks)) {
            sum += (count - expected) * (count - expected) / expected;
        }
        return sum;
    }

    private static int[] histogram(List<Double> ranks) {
        int[] counts = new int[BINS];
        ranks.forEach(rank -> counts[(int) Math.min(BINS - 1, rank * BINS)]++);
        return counts;
    }
}
