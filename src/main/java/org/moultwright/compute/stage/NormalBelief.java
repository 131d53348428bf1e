package org.moultwright.compute.stage;

import java.util.Arrays;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;

/**
 * What is believed of several quantities together: a multivariate normal distribution.
 *
 * @param mean one for each quantity
 * @param covariance symmetric and positive definite
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
public record NormalBelief(double[] mean, double[][] covariance) {
    private static final double ASYMMETRY = 1e-9;
    private static final double LEAST_PIVOT = 1e-14;

    /** Quantities. */
    public int size() {
        return mean.length;
    }

    /** Quantities alike: an error they share, and one each of its own. */
    public static NormalBelief alike(int size, double mean, double sharedSd, double ownSd) {
        double[] means = new double[size];
        Arrays.fill(means, mean);
        double[][] covariance = new double[size][size];
        for (int k = 0; k < size; k++) {
            Arrays.fill(covariance[k], sharedSd * sharedSd);
            covariance[k][k] += ownSd * ownSd;
        }
        return new NormalBelief(means, covariance);
    }

    /** The lower triangular matrix that turns independent standard normal coordinates into deviations. */
    double[][] root() {
        return new CholeskyDecomposition(MatrixUtils.createRealMatrix(covariance), ASYMMETRY, LEAST_PIVOT)
                .getL()
                .getData();
    }
}
