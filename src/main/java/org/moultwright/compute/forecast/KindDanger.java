package org.moultwright.compute.forecast;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.numbers.gamma.LogGamma;
import org.moultwright.compute.stage.Chance;

/**
 * How dangerous life is in broods of a kind, and how much they differ in it, as their dead tell: a common level of the
 * usual hazards, and the frailty of each brood about it. Level and frailty are gamma-distributed, so the dead of a
 * brood are negative-binomial, and both are known together on a grid. A keeper whose broods all lose alike has the
 * next one told by them rather than by its own few dead.
 */
final class KindDanger {
    /** Of frailty's gamma law, of mean 1: broods differ by 0.7, 0.5, 0.35, 0.25 (coefficient of variation). */
    private static final double[] FRAILTY_SHAPES = {2, 4, 8, 16};

    private static final double[] BELIEVED = {0.2, 0.4, 0.25, 0.15};

    /** The level is believed to be about 1, as by so many dead (assumption). */
    private static final double LEVEL_SHAPE = 4;

    private static final int LEVELS = 41;
    private static final double WIDEST = Math.log(6);

    private final double[] weightsSummed = new double[LEVELS * FRAILTY_SHAPES.length];

    /**
     * What these broods tell, each by its own dead and those a usual brood would have had. One that lived no time between
     * two counts tells nothing, even of dead that were found where none was counted.
     */
    KindDanger(List<LifeTable> broods) {
        double[] logWeights = new double[weightsSummed.length];
        for (int cell = 0; cell < logWeights.length; cell++) {
            double level = level(cell);
            logWeights[cell] = Math.log(BELIEVED[cell / LEVELS]) + LEVEL_SHAPE * (Math.log(level) - level);
        }
        for (LifeTable brood : broods) {
            double dead = brood.dead();
            double usualDead = brood.usualDead();
            for (int cell = 0; usualDead > 0 && cell < logWeights.length; cell++) {
                logWeights[cell] += logChance(dead, level(cell) * usualDead, frailtyShape(cell));
            }
        }
        double largest = Arrays.stream(logWeights).max().orElse(0);
        double sum = 0;
        for (int cell = 0; cell < logWeights.length; cell++) {
            sum += Math.exp(logWeights[cell] - largest);
            weightsSummed[cell] = sum;
        }
    }

    /**
     * A possible truth.
     *
     * @param level how many times as dangerous as usual life is in the kind
     * @param frailtyShape of the gamma law its broods differ by
     */
    record Danger(double level, double frailtyShape) {}

    Danger draw(Chance chance) {
        double wanted = chance.uniform() * weightsSummed[weightsSummed.length - 1];
        int found = Arrays.binarySearch(weightsSummed, wanted);
        int cell = Math.min(weightsSummed.length - 1, found < 0 ? -found - 1 : found + 1);
        return new Danger(level(cell), frailtyShape(cell));
    }

    private static double level(int cell) {
        return Math.exp(WIDEST * (2.0 * (cell % LEVELS) / (LEVELS - 1) - 1));
    }

    private static double frailtyShape(int cell) {
        return FRAILTY_SHAPES[cell / LEVELS];
    }

    /** Log chance of so many dead by the negative binomial law, but for what level and shape leave as it is. */
    private static double logChance(double dead, double expected, double shape) {
        return LogGamma.value(shape + dead)
                - LogGamma.value(shape)
                + shape * Math.log(shape / (shape + expected))
                + dead * Math.log(expected / (shape + expected));
    }
}
