package org.moultwright.compute.stage;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;

/** Finds where a log density is highest, in coordinates of unit scale, and how it curves there. */
final class ModeFinder {
    private static final int MOST_EVALUATIONS = 1200;
    private static final double REACH = 8;
    private static final double STEP = 0.1;
    private static final double LEAST_CURVATURE = 0.5;

    private final ToDoubleFunction<double[]> logDensity;
    private final double[] best;
    private double highest = Double.NEGATIVE_INFINITY;

    private ModeFinder(ToDoubleFunction<double[]> logDensity, int dimension) {
        this.logDensity = logDensity;
        this.best = new double[dimension];
    }

    /** The highest point found from the origin. */
    static double[] mode(ToDoubleFunction<double[]> logDensity, int dimension) {
        ModeFinder finder = new ModeFinder(logDensity, dimension);
        finder.search();
        return finder.best;
    }

    private void search() {
        double[] low = new double[best.length];
        double[] high = new double[best.length];
        Arrays.fill(low, -REACH);
        Arrays.fill(high, REACH);
        try {
            new BOBYQAOptimizer(2 * best.length + 1, 0.5, 0.02)
                    .optimize(
                            new MaxEval(MOST_EVALUATIONS),
                            new ObjectiveFunction(this::tried),
                            GoalType.MAXIMIZE,
                            new InitialGuess(new double[best.length]),
                            new SimpleBounds(low, high));
        } catch (MathIllegalStateException outOfEvaluations) {
            // The best point so far is where the sampler starts; its own rounds mend what is missing.
        }
    }

    private double tried(double[] point) {
        double value = Math.max(logDensity.applyAsDouble(point), -1e12);
        if (value > highest) {
            highest = value;
            System.arraycopy(point, 0, best, 0, best.length);
        }
        return value;
    }

    /** The inverse of the negative curvature at a point, by finite differences. */
    static double[][] spread(ToDoubleFunction<double[]> logDensity, double[] at) {
        int size = at.length;
        double centre = logDensity.applyAsDouble(at);
        double[] above = new double[size];
        double[][] curvature = new double[size][size];
        for (int i = 0; i < size; i++) {
            above[i] = logDensity.applyAsDouble(moved(at, i, STEP, i, 0));
            double below = logDensity.applyAsDouble(moved(at, i, -STEP, i, 0));
            curvature[i][i] = Math.max(LEAST_CURVATURE, (2 * centre - above[i] - below) / (STEP * STEP));
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < i; j++) {
                double both = logDensity.applyAsDouble(moved(at, i, STEP, j, STEP));
                double cross = (above[i] + above[j] - centre - both) / (STEP * STEP);
                double most = 0.95 * Math.sqrt(curvature[i][i] * curvature[j][j]);
                curvature[i][j] = Math.max(-most, Math.min(most, cross));
                curvature[j][i] = curvature[i][j];
            }
        }
        return inverse(curvature);
    }

    private static double[] moved(double[] at, int i, double byFirst, int j, double bySecond) {
        double[] point = at.clone();
        point[i] += byFirst;
        point[j] += bySecond;
        return point;
    }

    /** The inverse, a direction flatter than the least curvature being taken as that. */
    private static double[][] inverse(double[][] curvature) {
        EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(MatrixUtils.createRealMatrix(curvature));
        double[] variances = eigen.getEigenvalues();
        for (int i = 0; i < variances.length; i++) {
            variances[i] = 1 / Math.max(LEAST_CURVATURE, variances[i]);
        }
        RealMatrix axes = eigen.getV();
        return axes.multiply(MatrixUtils.createRealDiagonalMatrix(variances))
                .multiply(axes.transpose())
                .getData();
    }
}
