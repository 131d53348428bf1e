package org.moultwright.compute.count;

import java.util.List;
import org.moultwright.domain.Require;

/**
 * Counting a clutch by weight: the ratio estimator with finite-population correction (Cochran, Sampling
 * Techniques, 1977, chapter 6).
 */
public final class CountByWeight {
    private CountByWeight() {}

    /**
     * The whole clutch from counted scoops: N = W Σc/Σw, with variance W² (1−f) s² / (n w̄²), where s² =
     * Σ(c − Rw)²/(n−1) and f is the share of the weight that was counted. A single scoop gives a total
     * without an error.
     *
     * @param scoops at least one
     * @param wholeWeight weight of the whole clutch, the scoops included
     */
    public static CountEstimate total(List<Scoop> scoops, double wholeWeight) {
        return total(scoops, wholeWeight, weighed(scoops) / wholeWeight);
    }

    /** The same where the sampled share is known otherwise, such as 49 of 196 equal units. */
    public static CountEstimate total(List<Scoop> scoops, double wholeWeight, double sampledShare) {
        int n = Require.atLeast("scoops", scoops.size(), 1);
        double weighed = weighed(scoops);
        Require.within("wholeWeight", wholeWeight, weighed, Double.MAX_VALUE);
        Require.within("sampledShare", sampledShare, 0, 1);
        double perWeight = scoops.stream().mapToInt(Scoop::count).sum() / weighed;
        double squares = scoops.stream()
                .mapToDouble(scoop -> scoop.count() - perWeight * scoop.weight())
                .map(deviation -> deviation * deviation)
                .sum();
        double meanWeight = weighed / n;
        double variance =
                wholeWeight * wholeWeight * (1 - sampledShare) * squares / (n - 1) / (n * meanWeight * meanWeight);
        return new CountEstimate(perWeight * wholeWeight, n > 1 ? Math.sqrt(variance) : Double.NaN, n - 1);
    }

    private static double weighed(List<Scoop> scoops) {
        return scoops.stream().mapToDouble(Scoop::weight).sum();
    }
}
