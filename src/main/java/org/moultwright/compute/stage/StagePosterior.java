package org.moultwright.compute.stage;

import java.util.List;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;

/**
 * The log posterior density of a brood's parameters, in coordinates in which the prior is standard normal.
 *
 * <p>Near a boundary in progress the evidence fixes the age at which the share passed so far passes, not the
 * median: the median's coordinate is sheared along the spread there, so that mode and curvature describe
 * what is left. The shear has a unit determinant.
 */
final class StagePosterior {
    private final List<TrayHistory> trays;
    private final StagePrior prior;
    private final double[][] root;
    private final double[] shear;

    StagePosterior(List<TrayHistory> trays, StagePrior prior) {
        this.trays = trays;
        this.prior = prior;
        this.root = new CholeskyDecomposition(MatrixUtils.createRealMatrix(prior.covariance()), 1e-9, 1e-14)
                .getL()
                .getData();
        this.shear = new double[prior.size()];
        for (int k = 0; k < shear.length; k++) {
            shear[k] = shareInProgress(k);
        }
    }

    int dimension() {
        return 3 * prior.size() + trays.size();
    }

    double logDensity(double[] point) {
        StageParameters parameters = parameters(point);
        double sum = -0.5 * priorSquares(point, parameters);
        for (int j = 0; j < trays.size(); j++) {
            for (int k = 0; k < prior.size(); k++) {
                sum += trays.get(j).evidence().get(k).logLikelihood(parameters.law(j, k));
            }
        }
        return Double.isNaN(sum) ? Double.NEGATIVE_INFINITY : sum;
    }

    StageParameters parameters(double[] point) {
        int size = prior.size();
        double[] logMedian = new double[size];
        double[] logSpread = new double[size];
        double[] neverLogit = new double[size];
        double[] trayShift = new double[trays.size()];
        for (int k = 0; k < size; k++) {
            logSpread[k] = prior.logSpread()[k] + prior.logSpreadSd() * bounded(point[size + k]);
            neverLogit[k] = prior.neverLogit()[k] + prior.neverLogitSd() * bounded(point[2 * size + k]);
            logMedian[k] = prior.logMedian()[k] - sheared(k, logSpread[k]);
            for (int l = 0; l <= k; l++) {
                logMedian[k] += root[k][l] * point[l];
            }
        }
        for (int j = 0; j < trayShift.length; j++) {
            trayShift[j] = prior.traySd() * point[3 * size + j];
        }
        return new StageParameters(logMedian, logSpread, neverLogit, trayShift);
    }

    private double priorSquares(double[] point, StageParameters parameters) {
        int size = prior.size();
        double[] standard = new double[size];
        double squares = 0;
        for (int k = 0; k < size; k++) {
            double rest = parameters.logMedian()[k] - prior.logMedian()[k];
            for (int l = 0; l < k; l++) {
                rest -= root[k][l] * standard[l];
            }
            standard[k] = rest / root[k][k];
            squares += standard[k] * standard[k];
        }
        for (int i = size; i < point.length; i++) {
            squares += point[i] * point[i];
        }
        return squares;
    }

    private double sheared(int boundary, double logSpread) {
        return shear[boundary] * (Math.exp(logSpread) - Math.exp(prior.logSpread()[boundary]));
    }

    /** The quantile reached at a boundary in progress, 0 where none or all have passed. */
    private double shareInProgress(int boundary) {
        double passed = 0;
        double all = 0;
        for (TrayHistory tray : trays) {
            PassingState last = tray.evidence().get(boundary).last();
            passed += last.passed();
            all += last.passed() + last.waiting();
        }
        boolean isInProgress = passed >= 1 && all - passed >= 1;
        return isInProgress ? -NormalTails.inverseSurvival((passed + 0.5) / (all + 1)) : 0;
    }

    /** Far out in the tails a coordinate stops, so that no exponential of it overflows. */
    private static double bounded(double coordinate) {
        return Math.max(-12, Math.min(12, coordinate));
    }
}
