package org.moultwright.compute.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * All that was seen of one tray at one boundary, in order of age.
 *
 * <p>Animals are the same from look to look, so each step asks only how many of those still waiting passed
 * since the one before.
 */
public final class BoundaryEvidence {
    /** What two animals of a tray have in common beyond the model, as a guard against too narrow answers (assumption). */
    public static final double CORRELATION = 0.005;

    private final List<PassingState> states;
    private final PassingSteps steps;
    private final List<Glimpse> laterGlimpses;
    private final OptionalDouble firstSightAge;

    BoundaryEvidence(
            List<PassingState> states,
            List<PassingStep> steps,
            List<Glimpse> laterGlimpses,
            OptionalDouble firstSightAge) {
        this.states = List.copyOf(states);
        this.steps = new PassingSteps(steps);
        this.laterGlimpses = List.copyOf(laterGlimpses);
        this.firstSightAge = firstSightAge;
    }

    /** The states at laying and at every look that counted, never empty. */
    public List<PassingState> states() {
        return states;
    }

    /** The latest of them. */
    public PassingState last() {
        return states.get(states.size() - 1);
    }

    /** Age at the first look that saw any past the boundary before one had been counted there, if one did. */
    public OptionalDouble firstSightAge() {
        return firstSightAge;
    }

    /** How likely what was seen is under a law, as a log, up to a constant. */
    double logLikelihood(PassingLaw law) {
        double sum = steps.logLikelihood(law);
        return laterGlimpses.isEmpty() ? sum : sum + glimpsesAfterLast(law);
    }

    /** How far what was seen lies from what a law expects: Pearson's χ² of the newly passed of all steps. */
    double scatter(PassingLaw law) {
        return steps.scatter(law);
    }

    /** The same of newly passed drawn from the law. */
    double replicatedScatter(PassingLaw law, Chance chance) {
        return steps.replicatedScatter(law, chance);
    }

    private double glimpsesAfterLast(PassingLaw law) {
        double before = law.survival(last().age());
        return HiddenPasses.logProbability(
                laterGlimpses,
                laterGlimpses.stream()
                        .mapToDouble(glimpse ->
                                PassingLaw.readAsPassed(law.passedIfWaiting(before, law.survival(glimpse.age()))))
                        .toArray());
    }

    /** Joins states into evidence; glimpses lie between the looks that counted. */
    static BoundaryEvidence of(
            List<PassingState> states, List<Double> goneWaiting, GlimpseFinder glimpses, OptionalDouble firstSightAge) {
        List<PassingStep> steps = new ArrayList<>();
        for (int i = 1; i < states.size(); i++) {
            PassingState from = states.get(i - 1);
            PassingState to = states.get(i);
            double passed = to.passed() - from.passed();
            double gone = goneWaiting.get(i) - goneWaiting.get(i - 1);
            double waiting = Math.max(from.waiting() - gone / 2, passed);
            steps.add(new PassingStep(from.age(), to.age(), waiting, passed, glimpses.between(from, to.age(), passed)));
        }
        PassingState last = states.get(states.size() - 1);
        return new BoundaryEvidence(
                states, steps, glimpses.between(last, Double.POSITIVE_INFINITY, last.waiting()), firstSightAge);
    }

    /** Finds what a partial look said between two counts. */
    @FunctionalInterface
    interface GlimpseFinder {
        /** The glimpses after one state and before an age, {@code candidates} animals being in question. */
        List<Glimpse> between(PassingState from, double toAge, double candidates);
    }
}
