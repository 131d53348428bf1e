package org.moultwright.compute.stage;

import java.util.Arrays;
import org.apache.commons.numbers.gamma.LogBeta;

/**
 * A look that left open how many had passed: for each number that may have, the chance of what was seen.
 *
 * @param age age at the look, in warm-days
 * @param chanceIfPassed chance of what was seen by how many of the animals in question had passed, from none to all
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
record Glimpse(double age, double[] chanceIfPassed) {
    /**
     * Samples among more are weighed as those of a tray of so many: the time to sum over all ways grows with their number,
     * and animals of one tray have too much in common for more to tell more.
     */
    static final int MOST_SAMPLED = 1_000;

    /** At least one had passed. */
    static Glimpse seen(double age, int candidates) {
        double[] chances = new double[candidates + 1];
        Arrays.fill(chances, 1, chances.length, 1);
        return new Glimpse(age, chances);
    }

    /**
     * Of some animals drawn from the tray so many had passed: hypergeometric, of at most {@link #MOST_SAMPLED} in question.
     *
     * @param candidates animals whose passing is in question
     * @param already animals known to have passed before, still in the tray
     * @param alive all animals in the tray
     */
    static Glimpse sample(double age, int candidates, int already, int alive, int count, int of) {
        return candidates <= MOST_SAMPLED
                ? ofAll(age, candidates, already, alive, count, of)
                : ofFewer(age, (double) MOST_SAMPLED / candidates, already, alive, count, of);
    }

    /** A sample of more than half of them would leave fewer ways to have passed than so many more animals had. */
    private static Glimpse ofFewer(double age, double share, int already, int alive, int count, int of) {
        int drawn = Math.min(of, MOST_SAMPLED / 2);
        return ofAll(
                age,
                MOST_SAMPLED,
                (int) Math.round(share * already),
                (int) Math.round(share * alive),
                (int) Math.round((double) count * drawn / of),
                drawn);
    }

    private static Glimpse ofAll(double age, int candidates, int already, int alive, int count, int of) {
        double[] chances = new double[candidates + 1];
        int total = Math.max(alive, Math.max(of, already + candidates));
        for (int passed = 0; passed <= candidates; passed++) {
            chances[passed] = hypergeometric(count, of, already + passed, total);
        }
        return new Glimpse(age, chances);
    }

    int candidates() {
        return chanceIfPassed.length - 1;
    }

    private static double hypergeometric(int hits, int drawn, int marked, int total) {
        boolean isPossible = hits <= marked && drawn - hits <= total - marked;
        return isPossible
                ? Math.exp(logWays(marked, hits) + logWays(total - marked, drawn - hits) - logWays(total, drawn))
                : 0;
    }

    private static double logWays(int all, int chosen) {
        return -Math.log1p(all) - LogBeta.value(chosen + 1.0, all - chosen + 1.0);
    }
}
