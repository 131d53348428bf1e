package org.moultwright.compute.stage;

import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Finds where a posterior is highest by Newton's method, and how it curves there.
 *
 * <p>Each tray's evidence of one boundary depends on that boundary's law alone, so the derivatives are taken
 * law by law and carried over to the coordinates: the cost grows with the evidence, not with the square of
 * the parameters.
 */
final class ModeFinder {
    private static final int MOST_STEPS = 25;
    private static final int MOST_HALVINGS = 12;
    private static final double LONGEST_STEP = 2;
    private static final double FARTHEST_START = 5;
    private static final double START_STEP = 0.5;
    private static final double SMALL_GAIN = 1e-9;

    /** A direction is never taken as flatter than this share of the prior's own curvature of 1. */
    private static final double LEAST_CURVATURE = 0.5;

    private final StagePosterior posterior;
    private final StageCoordinates coordinates;
    private double[] at;
    private double height;

    private ModeFinder(StagePosterior posterior) {
        this.posterior = posterior;
        this.coordinates = posterior.coordinates();
        this.at = new double[coordinates.dimension()];
        this.height = posterior.logDensity(at);
        startAtBestSpeed();
    }

    /** The climb starts at the likeliest common speed, so that it does not end in an unlikely valley nearer by. */
    private void startAtBestSpeed() {
        for (double speed = -FARTHEST_START; speed <= FARTHEST_START; speed += START_STEP) {
            double[] start = new double[at.length];
            start[0] = speed;
            double reached = posterior.logDensity(start);
            if (reached > height) {
                at = start;
                height = reached;
            }
        }
    }

    /**
     * A mode, in plain coordinates.
     *
     * @param covariance the inverse of the curvature there
     */
    record Mode(double[] point, RealMatrix covariance) {}

    /** The mode climbed to. */
    static Mode of(StagePosterior posterior) {
        ModeFinder finder = new ModeFinder(posterior);
        Climb climb = finder.look();
        for (int step = 0; step < MOST_STEPS && finder.climb(climb); step++) {
            climb = finder.look();
        }
        return new Mode(finder.at, climb.covariance());
    }

    private record Climb(RealVector gradient, RealMatrix covariance) {}

    private Climb look() {
        StageParameters parameters = coordinates.parameters(at);
        int dimension = coordinates.dimension();
        RealVector gradient = new ArrayRealVector(dimension);
        RealMatrix curvature = MatrixUtils.createRealMatrix(dimension, dimension);
        for (int j = 0; j < posterior.trays().size(); j++) {
            for (int k = 0; k < coordinates.boundaries(); k++) {
                BoundaryEvidence evidence = posterior.trays().get(j).evidence().get(k);
                LawSlopes slopes =
                        LawSlopes.of(evidence::logLikelihood, parameters.law(j, k), coordinates.hasAgeShift());
                RealMatrix byParameter = coordinates.lawSlopes(parameters, j, k);
                gradient = gradient.add(byParameter.preMultiply(new ArrayRealVector(slopes.gradient())));
                curvature = curvature.add(byParameter
                        .transpose()
                        .multiply(MatrixUtils.createRealMatrix(slopes.curvature()))
                        .multiply(byParameter));
            }
        }
        RealMatrix toParameters = coordinates.slopes(at);
        RealVector uphill = toParameters.preMultiply(gradient).subtract(new ArrayRealVector(at));
        RealMatrix bowl = toParameters
                .transpose()
                .multiply(curvature)
                .multiply(toParameters)
                .scalarMultiply(-1)
                .add(MatrixUtils.createRealIdentityMatrix(dimension));
        return new Climb(uphill, inverse(bowl));
    }

    /** Steps uphill, halving the step until it gains; false where nothing is left to gain. */
    private boolean climb(Climb climb) {
        RealVector step = climb.covariance().operate(climb.gradient());
        double promised = step.dotProduct(climb.gradient());
        if (!(promised > SMALL_GAIN)) {
            return false;
        }
        double longest = step.getLInfNorm();
        RealVector tried = longest > LONGEST_STEP ? step.mapMultiply(LONGEST_STEP / longest) : step;
        for (int halving = 0; halving < MOST_HALVINGS; halving++) {
            double[] point = new ArrayRealVector(at).add(tried).toArray();
            double reached = posterior.logDensity(point);
            if (reached > height) {
                boolean isWorthAnother = reached - height > SMALL_GAIN;
                at = point;
                height = reached;
                return isWorthAnother;
            }
            tried = tried.mapMultiply(0.5);
        }
        return false;
    }

    /** The inverse, a direction flatter than the least curvature being taken as that. */
    private static RealMatrix inverse(RealMatrix bowl) {
        EigenDecompositionSymmetric eigen =
                new EigenDecompositionSymmetric(bowl.add(bowl.transpose()).scalarMultiply(0.5));
        double[] variances = eigen.getEigenvalues();
        for (int i = 0; i < variances.length; i++) {
            variances[i] = 1 / Math.max(LEAST_CURVATURE, variances[i]);
        }
        RealMatrix axes = eigen.getV();
        return axes.multiply(MatrixUtils.createRealDiagonalMatrix(variances)).multiply(axes.transpose());
    }
}
