package org.moultwright.compute.stage;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * What one brood's evidence says of its boundaries: the mode of its posterior and the curvature there.
 *
 * @param logMedian log median age at each boundary
 * @param logSpread log of the individual spread
 * @param neverLogit log odds that an animal past the boundary before never passes each
 * @param trayShiftSquares expected square of each tray's shift of log age
 */
public record StageFit(
        NormalBelief logMedian, NormalBelief logSpread, NormalBelief neverLogit, List<Double> trayShiftSquares) {
    public StageFit {
        trayShiftSquares = List.copyOf(trayShiftSquares);
    }

    /** The fit of a brood's trays under a prior, which ought to be a vague one. */
    public static StageFit of(List<TrayHistory> trays, StagePrior prior) {
        StagePosterior posterior = new StagePosterior(trays, prior);
        ModeFinder.Mode mode = ModeFinder.of(posterior);
        StageParameters found = posterior.coordinates().parameters(mode.point());
        RealMatrix slopes = posterior.coordinates().slopes(mode.point());
        RealMatrix covariance = slopes.multiply(mode.covariance()).multiply(slopes.transpose());
        int size = prior.size();
        RealVector shifts = new ArrayRealVector(found.trayShift());
        List<Double> squares = IntStream.range(0, trays.size())
                .mapToObj(
                        j -> shifts.getEntry(j) * shifts.getEntry(j) + covariance.getEntry(3 * size + j, 3 * size + j))
                .toList();
        return new StageFit(
                block(found.logMedian(), covariance, 0),
                block(found.logSpread(), covariance, size),
                block(found.neverLogit(), covariance, 2 * size),
                squares);
    }

    private static NormalBelief block(double[] mean, RealMatrix covariance, int offset) {
        int last = offset + mean.length - 1;
        return new NormalBelief(
                mean, covariance.getSubMatrix(offset, last, offset, last).getData());
    }
}
