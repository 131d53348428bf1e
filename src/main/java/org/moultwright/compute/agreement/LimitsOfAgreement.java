package org.moultwright.compute.agreement;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.TDistribution;
import org.moultwright.domain.Require;

/**
 * How far two instruments differ on most occasions, and how sure that is (Bland &amp; Altman 1986).
 *
 * <p>Holds for differences that neither grow with the value nor hang together in time.
 *
 * @param pairs how many differences it rests on
 * @param bias their mean
 * @param sd their standard deviation
 * @param spread how many standard deviations the limits lie from the bias
 */
public record LimitsOfAgreement(int pairs, double bias, double sd, double spread) {
    /** Limits between which 95 % of normal differences lie. */
    public static final double SPREAD_95 = 1.96;

    /**
     * The limits of differences.
     *
     * @param differences one instrument less the other, pair by pair, at least two
     */
    public static LimitsOfAgreement of(double[] differences, double spread) {
        int n = Require.atLeast("pairs", differences.length, 2);
        double bias = Arrays.stream(differences).average().orElseThrow();
        double squares = Arrays.stream(differences)
                .map(difference -> (difference - bias) * (difference - bias))
                .sum();
        return new LimitsOfAgreement(n, bias, Math.sqrt(squares / (n - 1)), spread);
    }

    public double lower() {
        return bias - spread * sd;
    }

    public double upper() {
        return bias + spread * sd;
    }

    public Interval biasInterval(double confidence) {
        return about(bias, sd / Math.sqrt(pairs), confidence);
    }

    public Interval lowerInterval(double confidence) {
        return about(lower(), limitStandardError(), confidence);
    }

    public Interval upperInterval(double confidence) {
        return about(upper(), limitStandardError(), confidence);
    }

    /** Standard error of either limit, about √(3 sd²/n) as Bland &amp; Altman give it. */
    public double limitStandardError() {
        return sd * Math.sqrt(3.0 / pairs);
    }

    private Interval about(double middle, double standardError, double confidence) {
        double reach = TDistribution.of(pairs - 1).inverseSurvivalProbability((1 - confidence) / 2) * standardError;
        return new Interval(middle - reach, middle + reach);
    }

    /** Where the true figure lies with the confidence asked for. */
    public record Interval(double from, double to) {}
}
