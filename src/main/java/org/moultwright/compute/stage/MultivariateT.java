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
    private final double[][] root;
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
        this.root = root(axes, lengths);
    }

    /**
     * The symmetric root of the stretched scale. Axes turn or swap when a covariance changes in its last bits, this root
     * does not: like evidence gives like draws.
     */
    private static double[][] root(double[][] axes, double[] lengths) {
        RealMatrix turned = MatrixUtils.createRealMatrix(axes);
        return turned.transpose()
                .multiply(MatrixUtils.createRealDiagonalMatrix(lengths))
                .multiply(turned)
                .getData();
    }

    double[] draw(Chance chance) {
        double stretch = Math.sqrt(degrees / (2 * chance.gamma(degrees / 2)));
        double[] point = mean.clone();
        for (int axis = 0; axis < lengths.length; axis++) {
            double step = stretch * chance.normal();
            for (int i = 0; i < point.length; i++) {
                point[i] += step * root[axis][i];
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
