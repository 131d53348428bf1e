package org.moultwright.compute.stage;

import java.util.function.ToDoubleFunction;

/**
 * How a log likelihood changes with a passing law's log median, log spread, log odds of never passing and shift
 * of age, by central differences.
 *
 * @param gradient first derivatives
 * @param curvature second derivatives
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
record LawSlopes(double[] gradient, double[][] curvature) {
    private static final int TRAITS = 4;
    private static final double STEP_IN_SPREADS = 0.05;
    private static final double SPREAD_STEP = 0.05;
    private static final double NEVER_STEP = 0.1;

    static LawSlopes of(ToDoubleFunction<PassingLaw> logLikelihood, PassingLaw law, boolean withAgeShift) {
        int traits = withAgeShift ? TRAITS : TRAITS - 1;
        double byMedian = STEP_IN_SPREADS * law.logSpread();
        double[] steps = {byMedian, SPREAD_STEP, NEVER_STEP, byMedian * Math.exp(law.logMedian())};
        double centre = logLikelihood.applyAsDouble(law);
        double[] gradient = new double[TRAITS];
        double[][] curvature = new double[TRAITS][TRAITS];
        double[] above = new double[TRAITS];
        for (int a = 0; a < traits; a++) {
            above[a] = logLikelihood.applyAsDouble(moved(law, a, steps[a]));
            double below = logLikelihood.applyAsDouble(moved(law, a, -steps[a]));
            gradient[a] = (above[a] - below) / (2 * steps[a]);
            curvature[a][a] = (above[a] - 2 * centre + below) / (steps[a] * steps[a]);
            for (int b = 0; b < a; b++) {
                double both = logLikelihood.applyAsDouble(moved(moved(law, a, steps[a]), b, steps[b]));
                double cross = (both - above[a] - above[b] + centre) / (steps[a] * steps[b]);
                curvature[a][b] = cross;
                curvature[b][a] = cross;
            }
        }
        return new LawSlopes(gradient, curvature);
    }

    private static PassingLaw moved(PassingLaw law, int trait, double step) {
        return switch (trait) {
            case 0 -> new PassingLaw(law.logMedian() + step, law.logSpread(), law.neverShare(), law.ageShiftWarmDays());
            case 1 ->
                new PassingLaw(
                        law.logMedian(), law.logSpread() * Math.exp(step), law.neverShare(), law.ageShiftWarmDays());
            case 2 ->
                new PassingLaw(
                        law.logMedian(), law.logSpread(), atOdds(law.neverShare(), step), law.ageShiftWarmDays());
            default ->
                new PassingLaw(law.logMedian(), law.logSpread(), law.neverShare(), law.ageShiftWarmDays() + step);
        };
    }

    private static double atOdds(double share, double logOddsStep) {
        double odds = share / (1 - share) * Math.exp(logOddsStep);
        return odds / (1 + odds);
    }
}
