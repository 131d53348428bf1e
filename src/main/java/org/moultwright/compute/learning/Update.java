package org.moultwright.compute.learning;

import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.moultwright.compute.stage.NormalBelief;

/**
 * A normal belief in the light of one observation of the same quantities with normal error.
 *
 * @param belief the belief afterwards
 * @param logEvidence log density of the observation under the belief before, up to a constant of the dimension
 */
record Update(NormalBelief belief, double logEvidence) {

    static Update of(NormalBelief before, NormalBelief observation) {
        RealMatrix prior = MatrixUtils.createRealMatrix(before.covariance());
        RealMatrix sum = prior.add(MatrixUtils.createRealMatrix(observation.covariance()));
        CholeskyDecomposition cholesky = new CholeskyDecomposition(sum, 1e-9, 1e-18);
        RealVector surprise = new ArrayRealVector(observation.mean()).subtract(new ArrayRealVector(before.mean()));
        RealMatrix gain = cholesky.getSolver().solve(prior).transpose();
        RealMatrix covariance = prior.subtract(gain.multiply(prior));
        double distance = surprise.dotProduct(cholesky.getSolver().solve(surprise));
        return new Update(
                new NormalBelief(
                        new ArrayRealVector(before.mean())
                                .add(gain.operate(surprise))
                                .toArray(),
                        covariance
                                .add(covariance.transpose())
                                .scalarMultiply(0.5)
                                .getData()),
                -0.5 * (distance + Math.log(cholesky.getDeterminant())));
    }
}
