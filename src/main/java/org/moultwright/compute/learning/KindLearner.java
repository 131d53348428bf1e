package org.moultwright.compute.learning;

import java.util.List;
import org.moultwright.compute.stage.NormalBelief;
import org.moultwright.compute.stage.StageFit;
import org.moultwright.compute.stage.StagePrior;

/**
 * Turns a belief about a kind of brood, and the fits of completed ones, into the prior of the next.
 *
 * <p>The variations from brood to brood in spread and in the share that never passes, and the worth of the
 * belief in the usual tray, are assumptions from invented broods.
 */
public final class KindLearner {
    private static final double SPREAD_SHARED_SD = 0.13;
    private static final double SPREAD_OWN_SD = 0.08;
    private static final double NEVER_SHARED_SD = 0.2;
    private static final double NEVER_OWN_SD = 0.55;
    private static final double TRAYS_BELIEVED = 6;

    private KindLearner() {}

    /**
     * The prior of the next brood.
     *
     * @param kind what is believed of the kind's own boundaries; its age half width is the next brood's
     * @param lengthShares the share of each stage's length in the age at each boundary
     * @param broods fits of completed broods with the same boundaries
     */
    public static StagePrior next(StagePrior kind, double[][] lengthShares, List<StageFit> broods) {
        int size = kind.size();
        return new StagePrior(
                MedianLearner.next(
                        kind.logMedian(),
                        lengthShares,
                        broods.stream().map(StageFit::logMedian).toList()),
                next(
                        kind.logSpread(),
                        NormalBelief.alike(size, 0, SPREAD_SHARED_SD, SPREAD_OWN_SD),
                        broods.stream().map(StageFit::logSpread).toList()),
                next(
                        kind.neverLogit(),
                        NormalBelief.alike(size, 0, NEVER_SHARED_SD, NEVER_OWN_SD),
                        broods.stream().map(StageFit::neverLogit).toList()),
                traySd(kind.traySd(), broods),
                kind.ageHalfWidthWarmDays());
    }

    /**
     * How log median ages vary together where a brood has a speed of its own, and each stage a length.
     *
     * @param speedSd standard deviation of the log speed
     * @param lengthSd that of the log of each stage's length
     * @param lengthShares the share of each stage's length in the age at each boundary
     */
    public static double[][] between(double speedSd, double lengthSd, double[][] lengthShares) {
        return MedianLearner.between(speedSd, lengthSd, lengthShares);
    }

    private static NormalBelief next(NormalBelief kind, NormalBelief between, List<NormalBelief> broods) {
        return NextBrood.after(kind, between.covariance(), broods).belief();
    }

    private static double traySd(double believed, List<StageFit> broods) {
        double squares = TRAYS_BELIEVED * believed * believed;
        double trays = TRAYS_BELIEVED;
        for (StageFit brood : broods) {
            for (double square : brood.trayShiftSquares()) {
                squares += square;
                trays++;
            }
        }
        return Math.sqrt(squares / trays);
    }
}
