package org.moultwright.compute.stage;

import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Coordinates for a brood's parameters in which the prior is standard normal: medians, spreads and never-shares
 * by boundary, shifts by tray, and the common shift of age where there is one.
 */
final class StageCoordinates {
    /** Far out in the tails a coordinate stops, so that no exponential of it overflows. */
    private static final double FARTHEST = 12;

    private final StagePrior prior;
    private final int trays;
    private final double[][] medianRoot;
    private final double[][] spreadRoot;
    private final double[][] neverRoot;

    StageCoordinates(StagePrior prior, int trays) {
        this.prior = prior;
        this.trays = trays;
        this.medianRoot = prior.logMedian().root();
        this.spreadRoot = prior.logSpread().root();
        this.neverRoot = prior.neverLogit().root();
    }

    int boundaries() {
        return prior.size();
    }

    int dimension() {
        return 3 * prior.size() + trays + (hasAgeShift() ? 1 : 0);
    }

    boolean hasAgeShift() {
        return prior.ageHalfWidthWarmDays() > 0;
    }

    StageParameters parameters(double[] point) {
        int size = boundaries();
        double[] trayShift = new double[trays];
        for (int j = 0; j < trays; j++) {
            trayShift[j] = prior.traySd() * point[3 * size + j];
        }
        return new StageParameters(
                moved(prior.logMedian().mean(), medianRoot, point, 0),
                logSpread(point),
                moved(prior.neverLogit().mean(), neverRoot, point, 2 * size),
                trayShift,
                hasAgeShift() ? ageShift(point[dimension() - 1]) : 0);
    }

    /** Log of the spread at each boundary, the only part of the parameters that {@link Shear} needs. */
    double[] logSpread(double[] point) {
        return moved(prior.logSpread().mean(), spreadRoot, point, boundaries());
    }

    /** How the parameters change with the coordinates, both in the same order. */
    RealMatrix slopes(double[] point) {
        int size = boundaries();
        RealMatrix slopes = MatrixUtils.createRealMatrix(dimension(), dimension());
        slopes.setSubMatrix(medianRoot, 0, 0);
        slopes.setSubMatrix(spreadRoot, size, size);
        slopes.setSubMatrix(neverRoot, 2 * size, 2 * size);
        for (int j = 3 * size; j < 3 * size + trays; j++) {
            slopes.setEntry(j, j, prior.traySd());
        }
        if (hasAgeShift()) {
            int last = dimension() - 1;
            double density = Math.exp(-point[last] * point[last] / 2) / Math.sqrt(2 * Math.PI);
            slopes.setEntry(last, last, 2 * prior.ageHalfWidthWarmDays() * density);
        }
        return slopes;
    }

    /**
     * How the traits of one tray's law at one boundary (log median, log spread, log odds of never passing, shift
     * of age) change with the parameters. A tray's shift moves the log median as much as the median itself does.
     */
    RealMatrix lawSlopes(StageParameters parameters, int tray, int boundary) {
        int size = boundaries();
        RealMatrix slopes = MatrixUtils.createRealMatrix(4, dimension());
        slopes.setEntry(0, boundary, 1);
        slopes.setEntry(0, 3 * size + tray, 1);
        slopes.setEntry(1, size + boundary, 1);
        for (int k = 0; k <= boundary; k++) {
            slopes.setEntry(2, 2 * size + k, parameters.stuckShare(k) / parameters.neverShare(boundary));
        }
        if (hasAgeShift()) {
            slopes.setEntry(3, dimension() - 1, 1);
        }
        return slopes;
    }

    double[][] medianRoot() {
        return medianRoot;
    }

    double[][] spreadRoot() {
        return spreadRoot;
    }

    private double ageShift(double coordinate) {
        return prior.ageHalfWidthWarmDays() * (1 - 2 * NormalTails.survival(coordinate));
    }

    private static double[] moved(double[] mean, double[][] root, double[] point, int offset) {
        double[] moved = mean.clone();
        for (int k = 0; k < moved.length; k++) {
            for (int l = 0; l <= k; l++) {
                moved[k] += root[k][l] * Math.max(-FARTHEST, Math.min(FARTHEST, point[offset + l]));
            }
        }
        return moved;
    }
}
