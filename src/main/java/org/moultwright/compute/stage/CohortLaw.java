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
    private static final double STRIDE = 0.5;
    private static final double FARTHEST_STRIDE = 64;

    /** A logistic law so many times as narrow is much like a normal one. */
    private static final double LOGISTIC = 1.702;

    /** By animals, the deviate that the first of so many is expected to have. */
    private static final double[] FIRST_OF = new double[513];

    static {
        for (int animals = 1; animals < FIRST_OF.length; animals++) {
            FIRST_OF[animals] = -NormalTails.inverseSurvival(0.5 / animals);
        }
    }

    private static final double CLOSE = 1e-3;
    private static final double CLOSE_SHARE = 2e-3;

    private final PassingLaw law;
    private final double[] animals;
    private final double[] centre;
    private final double[] narrowness;
    private final double all;
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
        this.all = Math.max(1, before.passed() + coming);
        double earliest = FIRST_OF[(int) Math.min(FIRST_OF.length - 1.0, Math.rint(all))];
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
        double close = CLOSE_SHARE * Math.min(target, waiting - target);
        double least = Math.max(-LATEST - 2, now);
        double low = Math.max(least, Math.log(all / target - 1) / LOGISTIC);
        double high = low;
        double lowGap = expectedWaiting(low) - target;
        double highGap = lowGap;
        for (double stride = STRIDE; lowGap < 0 && low > least; stride *= 2) {
            high = low;
            highGap = lowGap;
            low = Math.max(least, low - stride);
            lowGap = expectedWaiting(low) - target;
        }
        for (double stride = STRIDE; highGap > 0 && stride < FARTHEST_STRIDE; stride *= 2) {
            low = high;
            lowGap = highGap;
            high += stride;
            highGap = expectedWaiting(high) - target;
        }
        for (int step = 0; step < MOST_STEPS && high - low > CLOSE; step++) {
            // Straight between the ends, but every third step in their middle lest one end stays where it is.
            double at = step % 3 == 2 ? (low + high) / 2 : low + (high - low) * lowGap / (lowGap - highGap);
            double gap = expectedWaiting(at) - target;
            if (Math.abs(gap) < close) {
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
