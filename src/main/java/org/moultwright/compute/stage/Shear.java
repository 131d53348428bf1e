package org.moultwright.compute.stage;

import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Coordinates bent so that mode and curvature describe a posterior well.
 *
 * <p>Near a boundary in progress the evidence fixes the age at which the share passed so far passes, not the
 * median: here the median's coordinate stands for that age, median + z·spread. Volumes are kept.
 */
final class Shear {
    private final StageCoordinates coordinates;
    private final double[] quantile;
    private final double[][] inverseRoot;

    Shear(StageCoordinates coordinates, List<TrayHistory> trays) {
        this.coordinates = coordinates;
        this.quantile = new double[coordinates.boundaries()];
        for (int k = 0; k < quantile.length; k++) {
            quantile[k] = quantileInProgress(trays, k);
        }
        this.inverseRoot = MatrixUtils.inverse(MatrixUtils.createRealMatrix(coordinates.medianRoot()))
                .getData();
    }

    /** Bent coordinates of a plain point. */
    double[] bent(double[] plain) {
        return moved(plain, 1);
    }

    /** The plain point of bent coordinates. */
    double[] plain(double[] bent) {
        return moved(bent, -1);
    }

    /** How bent coordinates change with plain ones. */
    RealMatrix slopes(double[] plain) {
        int size = quantile.length;
        double[] logSpread = coordinates.logSpread(plain);
        RealMatrix bySpread = MatrixUtils.createRealMatrix(coordinates.spreadRoot());
        for (int k = 0; k < size; k++) {
            bySpread.setRowVector(k, bySpread.getRowVector(k).mapMultiply(quantile[k] * Math.exp(logSpread[k])));
        }
        RealMatrix slopes = MatrixUtils.createRealIdentityMatrix(plain.length);
        slopes.setSubMatrix(
                MatrixUtils.createRealMatrix(inverseRoot).multiply(bySpread).getData(), 0, size);
        return slopes;
    }

    private double[] moved(double[] point, int direction) {
        double[] moved = point.clone();
        double[] logSpread = coordinates.logSpread(point);
        for (int k = 0; k < quantile.length; k++) {
            for (int l = 0; l <= k; l++) {
                moved[k] += direction * inverseRoot[k][l] * quantile[l] * Math.exp(logSpread[l]);
            }
        }
        return moved;
    }

    /** The quantile reached at a boundary in progress, 0 where none or all have passed. */
    private static double quantileInProgress(List<TrayHistory> trays, int boundary) {
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
}
