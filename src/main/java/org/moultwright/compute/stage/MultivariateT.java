package org.moultwright.compute.stage;

import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/** A multivariate t distribution: a normal one with heavier tails, to draw proposals from. Immutable. */
final class MultivariateT {
    private final double[] mean;
    private final double degrees;
    private final double[][] axes;
    private final double[] lengths;
    private final double logLengths;

    /** A covariance's directions shorter than {@code leastVariance} are stretched to it. */
    MultivariateT(double[] mean, double[][] scale, double degrees, double leastVariance) {
        this.mean = mean.clone();
        this.degrees = degrees;
        RealMatrix matrix = MatrixUtils.createRealMatrix(scale);
        // Rounding leaves a computed covariance a last bit short of symmetric.
        EigenDecompositionSymmetric eigen =
                new EigenDecompositionSymmetric(matrix.add(matrix.transpose()).scalarMultiply(0.5));
        this.axes = eigen.getVT().getData();
        this.lengths = new double[mean.length];
        double sum = 0;
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = Math.sqrt(Math.max(leastVariance, eigen.getEigenvalue(i)));
            sum += Math.log(lengths[i]);
        }
        this.logLengths = sum;
    }

    double[] draw(Chance chance) {
        double stretch = Math.sqrt(degrees / (2 * chance.gamma(degrees / 2)));
        double[] point = mean.clone();
        for (int axis = 0; axis < lengths.length; axis++) {
            double step = stretch * lengths[axis] * chance.normal();
            for (int i = 0; i < point.length; i++) {
                point[i] += step * axes[axis][i];
            }
        }
        return point;
    }

    /** The log density up to a constant that depends on the dimension and the degrees only. */
    double logDensity(double[] point) {
        double squares = 0;
        for (int axis = 0; axis < lengths.length; axis++) {
            double along = 0;
            for (int i = 0; i < point.length; i++) {
                along += axes[axis][i] * (point[i] - mean[i]);
            }
            squares += along * along / (lengths[axis] * lengths[axis]);
        }
        return -logLengths - (degrees + point.length) / 2 * Math.log1p(squares / degrees);
    }
}
