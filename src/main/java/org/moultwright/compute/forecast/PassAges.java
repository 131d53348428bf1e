package org.moultwright.compute.forecast;

import java.util.List;
import java.util.Optional;
import org.moultwright.compute.stage.BoundaryEvidence;
import org.moultwright.compute.stage.Chance;
import org.moultwright.compute.stage.CohortLaw;
import org.moultwright.compute.stage.PassingLaw;
import org.moultwright.compute.stage.PassingState;

/** Draws the age at which the n-th animal of a tray passed or will pass one boundary. */
final class PassAges {
    private static final double NO_ROOM = 1e-12;

    private final BoundaryEvidence evidence;
    private final Chance chance;

    PassAges(BoundaryEvidence evidence, Chance chance) {
        this.evidence = evidence;
        this.chance = chance;
    }

    /**
     * The age at a pass.
     *
     * @param rank which pass, from 1 on
     * @param coming how many of those waiting will pass
     * @param cohort the law of those waiting, where there is a boundary before
     */
    double draw(int rank, int coming, PassingLaw law, Optional<CohortLaw> cohort) {
        List<PassingState> states = evidence.states();
        for (int i = 1; i < states.size(); i++) {
            PassingState from = states.get(i - 1);
            PassingState to = states.get(i);
            if (Math.round(to.passed()) >= rank && !(rank == 1 && isMisread(from, to, law))) {
                return between(from, to, rank, law);
            }
        }
        PassingState last = evidence.last();
        if (rank == 1 && isSeenSince(last)) {
            return firstSeen(last, Math.max(1, coming), law);
        }
        double rankAhead = Math.max(1.0, rank - Math.rint(last.passed()));
        double share = chance.orderStatistic(rankAhead, Math.max(rankAhead, coming), BoundaryEvidence.CORRELATION);
        if (cohort.isPresent()) {
            return Math.max(last.age(), cohort.get().ageAt(share));
        }
        double survival = law.survival(last.age()) * (1 - share);
        return survival > 0 ? Math.max(last.age(), law.ageAtSurvival(survival)) : last.age();
    }

    /** Whether the law holds a pass in between less likely than a misread. */
    private static boolean isMisread(PassingState from, PassingState to, PassingLaw law) {
        return law.survival(from.age()) - law.survival(to.age()) < PassingLaw.MISREAD;
    }

    private boolean isSeenSince(PassingState last) {
        return evidence.firstSightAge().orElse(0) > last.age();
    }

    /** The first of so many, which was not there at the last count and was seen later. */
    private double firstSeen(PassingState last, int coming, PassingLaw law) {
        double seen = evidence.firstSightAge().orElseThrow();
        double survivalAtLast = law.survival(last.age());
        double noneBySight = survivalAtLast > 0 ? Math.pow(law.survival(seen) / survivalAtLast, coming) : 1;
        double none = 1 - chance.uniform() * (1 - noneBySight);
        double age = noneBySight < 1 - NO_ROOM
                ? law.ageAtSurvival(survivalAtLast * Math.pow(none, 1.0 / coming))
                : last.age() + chance.uniform() * (seen - last.age());
        return Math.max(last.age(), Math.min(seen, age));
    }

    /** Within the looks that bracket it, as the law has it; evenly where the law has no room for it there. */
    private double between(PassingState from, PassingState to, int rank, PassingLaw law) {
        double passed = Math.max(1, to.passed() - from.passed());
        double rankWithin = Math.min(passed, Math.max(1, rank - from.passed()));
        double share = chance.orderStatistic(rankWithin, passed, BoundaryEvidence.CORRELATION);
        double before = law.survival(from.age());
        double room = before - law.survival(to.age());
        double age = room > NO_ROOM
                ? law.ageAtSurvival(before - share * room)
                : from.age() + share * (to.age() - from.age());
        return Math.max(from.age(), Math.min(to.age(), age));
    }
}
