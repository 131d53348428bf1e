package org.moultwright.compute.stage;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.numbers.gamma.LogGamma;

/**
 * The chance of what partial looks saw, summed over all ways in which the animals in question may have passed
 * one after another: a forward recursion over how many had by each look. Exact but for ways less likely than
 * 1e-12 of the likeliest.
 */
final class HiddenPasses {
    private static final double NEGLIGIBLE = 1e-12;

    /** Logs of the factorials of the numbers of animals a tray usually holds. */
    private static final double[] LOG_FACTORIALS = new double[512];

    static {
        for (int n = 1; n < LOG_FACTORIALS.length; n++) {
            LOG_FACTORIALS[n] = LOG_FACTORIALS[n - 1] + Math.log(n);
        }
    }

    private final int candidates;
    private double[] chanceByPassed = {1};
    private int fewest;
    private double logScale;

    private HiddenPasses(int candidates) {
        this.candidates = candidates;
    }

    /**
     * The log of that chance. Looks of different numbers of animals in question are taken to tell nothing of each other.
     *
     * @param looks in order of age, each with its chances by how many of those in question had passed
     * @param passedBy for each look, the chance that one in question had passed by then; never falls
     */
    static double logProbability(List<Glimpse> looks, double[] passedBy) {
        double sum = 0;
        for (int candidates :
                looks.stream().mapToInt(Glimpse::candidates).distinct().toArray()) {
            sum += logProbability(candidates, looks, passedBy);
        }
        return sum;
    }

    private static double logProbability(int candidates, List<Glimpse> looks, double[] passedBy) {
        HiddenPasses hidden = new HiddenPasses(candidates);
        double before = 0;
        int looked = 0;
        boolean isPossible = true;
        for (int i = 0; i < looks.size(); i++) {
            if (looks.get(i).candidates() == candidates) {
                double now = Math.max(before, passedBy[i]);
                isPossible =
                        isPossible && hidden.passAndSee(before < 1 ? (now - before) / (1 - before) : 1, looks.get(i));
                before = now;
                looked++;
            }
        }
        return isPossible ? hidden.logScale : Math.log(NEGLIGIBLE) * looked;
    }

    private boolean passAndSee(double chance, Glimpse look) {
        pass(chance);
        return see(look);
    }

    /** Each candidate that has not passed does so with this chance. */
    private void pass(double chance) {
        double[] next = new double[candidates - fewest + 1];
        for (int i = 0; i < chanceByPassed.length; i++) {
            spread(chanceByPassed[i], i, candidates - fewest - i, chance, next);
        }
        chanceByPassed = next;
    }

    /** Adds one state's mass times the binomial distribution, outwards from its mode. */
    private static void spread(double mass, int from, int trials, double chance, double[] next) {
        if (mass == 0) {
            return;
        }
        if (chance <= 0 || chance >= 1) {
            next[from + (chance <= 0 ? 0 : trials)] += mass;
            return;
        }
        int mode = (int) Math.min(trials, (trials + 1) * chance);
        double atMode = mass * Math.exp(logBinomial(trials, mode, chance));
        double odds = chance / (1 - chance);
        double term = atMode;
        for (int k = mode; k <= trials && term > NEGLIGIBLE * atMode; k++) {
            next[from + k] += term;
            term *= odds * (trials - k) / (k + 1);
        }
        term = atMode * mode / (odds * (trials - mode + 1));
        for (int k = mode - 1; k >= 0 && term > NEGLIGIBLE * atMode; k--) {
            next[from + k] += term;
            term *= k / (odds * (trials - k + 1));
        }
    }

    private static double logBinomial(int trials, int passed, double chance) {
        return logFactorial(trials)
                - logFactorial(passed)
                - logFactorial(trials - passed)
                + passed * Math.log(chance)
                + (trials - passed) * Math.log1p(-chance);
    }

    private static double logFactorial(int n) {
        return n < LOG_FACTORIALS.length ? LOG_FACTORIALS[n] : LogGamma.value(n + 1.0);
    }

    /** Weighs each state by the chance of what was seen in it; false where none could have shown it. */
    private boolean see(Glimpse look) {
        double highest = 0;
        for (int i = 0; i < chanceByPassed.length; i++) {
            chanceByPassed[i] *= look.chanceIfPassed()[fewest + i];
            highest = Math.max(highest, chanceByPassed[i]);
        }
        if (highest < Double.MIN_NORMAL) {
            return false;
        }
        trim(highest);
        double sum = Arrays.stream(chanceByPassed).sum();
        for (int i = 0; i < chanceByPassed.length; i++) {
            chanceByPassed[i] /= sum;
        }
        logScale += Math.log(sum);
        return true;
    }

    private void trim(double highest) {
        int first = 0;
        while (chanceByPassed[first] < NEGLIGIBLE * highest) {
            first++;
        }
        int last = chanceByPassed.length - 1;
        while (chanceByPassed[last] < NEGLIGIBLE * highest) {
            last--;
        }
        chanceByPassed = Arrays.copyOfRange(chanceByPassed, first, last + 1);
        fewest += first;
    }
}
