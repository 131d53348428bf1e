package org.moultwright.compute.stage;

import org.moultwright.compute.stage.TruncatedNormal.Bound;

/**
 * When those animals of one tray that wait at a boundary pass it, given when each of the tray's animals passed the
 * boundary before: who was late there is likely late here.
 *
 * <p>Log ages of an animal at the two boundaries are taken as normal with a correlation. The animals that passed
 * between two looks are a group; a group's log age here is normal about what its mean there lets expect. Immutable.
 */
public final class CohortLaw {
    /** Later than this many spreads at the boundary before tells no more than this. */
    private static final double LATEST = 4;

    private static final int MOST_STEPS = 60;
    private static final double STRIDE = 1.5;
    private static final double CLOSE = 1e-3;
    private static final double CLOSE_SHARE = 1e-3;

    private final PassingLaw law;
    private final double[] animals;
    private final double[] centre;
    private final double[] narrowness;
    private final double now;
    private final double waiting;

    /**
     * The law of one boundary in one possible truth.
     *
     * @param before when its animals passed the boundary before
     * @param lawBefore how they did
     * @param coming how many of those waiting there will yet
     * @param law how they pass this one, those before left aside
     * @param correlation of an animal's log ages at the two
     * @param nowAge age at the last look that counted here
     */
    public CohortLaw(
            PassedBefore before, PassingLaw lawBefore, int coming, PassingLaw law, double correlation, double nowAge) {
        int groups = before.size();
        this.law = law;
        this.animals = new double[groups + 1];
        this.centre = new double[groups + 1];
        this.narrowness = new double[groups + 1];
        // A pass long before that of the first of so many was misread: it is taken for the first.
        double earliest = -NormalTails.inverseSurvival(0.5 / Math.max(1, before.passed() + coming));
        Bound from = Bound.at(lawBefore.deviate(before.edge(0)));
        for (int i = 0; i <= groups; i++) {
            Bound to = i < groups ? Bound.at(lawBefore.deviate(before.edge(i + 1))) : Bound.NONE;
            animals[i] = i < groups ? before.animals(i) : coming;
            TruncatedNormal there = TruncatedNormal.between(from, to);
            centre[i] = correlation * Math.max(earliest, Math.min(LATEST, there.mean()));
            narrowness[i] = 1 / Math.sqrt(1 - correlation * correlation * (1 - there.variance()));
            from = to;
        }
        this.now = law.deviate(nowAge);
        this.waiting = expectedWaiting(now);
    }

    /** The age at which a share of those waiting now, of those that ever will, has passed; never below now's. */
    public double ageAt(double share) {
        double target = waiting * (1 - share);
        double low = Math.max(-LATEST - 2, now);
        double high = low;
        double lowGap = 0;
        double highGap = waiting - target;
        for (int step = 0; highGap > 0 && step < MOST_STEPS; step++) {
            low = high;
            lowGap = highGap;
            high += STRIDE;
            highGap = expectedWaiting(high) - target;
        }
        for (int step = 0; step < MOST_STEPS && high - low > CLOSE; step++) {
            // Straight between the ends, but every third step in their middle lest one end stays where it is.
            double at = step % 3 == 2 ? (low + high) / 2 : low + (high - low) * lowGap / (lowGap - highGap);
            double gap = expectedWaiting(at) - target;
            if (Math.abs(gap) < CLOSE_SHARE * target) {
                return law.ageAtDeviate(at);
            }
            if (gap > 0) {
                low = at;
                lowGap = gap;
            } else {
                high = at;
                highGap = gap;
            }
        }
        return law.ageAtDeviate(high);
    }

    private double expectedWaiting(double deviate) {
        double sum = 0;
        for (int i = 0; i < animals.length; i++) {
            if (animals[i] > 0) {
                sum += animals[i] * QuickTail.survival((deviate - centre[i]) * narrowness[i]);
            }
        }
        return sum;
    }
}
