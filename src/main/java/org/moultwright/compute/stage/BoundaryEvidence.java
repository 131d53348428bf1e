package org.moultwright.compute.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All that was seen of one tray at one boundary, in order of age.
 *
 * <p>Animals are the same from look to look, so each step asks only how many of those still waiting passed
 * since the one before.
 */
public final class BoundaryEvidence {
    /** What two animals of a tray have in common beyond the model, as a guard against too narrow answers. */
    private static final double CORRELATION = 0.005;

    private final List<PassingState> states;
    private final List<PassingStep> steps;
    private final Optional<Glimpse> lastGlimpse;

    BoundaryEvidence(List<PassingState> states, List<PassingStep> steps, Optional<Glimpse> lastGlimpse) {
        this.states = List.copyOf(states);
        this.steps = steps.stream().filter(step -> step.waiting() > 0).toList();
        this.lastGlimpse = lastGlimpse;
    }

    /** The states at laying and at every look that counted, never empty. */
    public List<PassingState> states() {
        return states;
    }

    /** The latest of them. */
    public PassingState last() {
        return states.get(states.size() - 1);
    }

    /** How likely what was seen is under a law, as a log, up to a constant. */
    double logLikelihood(PassingLaw law) {
        double sum = 0;
        double age = 0;
        double survival = 1;
        for (PassingStep step : steps) {
            double before = step.fromAge() == age ? survival : law.survival(step.fromAge());
            age = step.toAge();
            survival = law.survival(age);
            double chance = law.readAsPassed(before, survival);
            double weight = 1 / (1 + (step.waiting() - 1) * CORRELATION);
            sum += Math.min(1, weight)
                    * (step.passed() * Math.log(chance) + (step.waiting() - step.passed()) * Math.log1p(-chance));
            if (step.glimpse().isPresent()) {
                sum += glimpseBetween(step.glimpse().get(), law, before, survival);
            }
        }
        return lastGlimpse.isPresent() ? sum + glimpseAfterLast(lastGlimpse.get(), law) : sum;
    }

    /** Of those that passed within the step, some had by the glimpse. */
    private static double glimpseBetween(Glimpse glimpse, PassingLaw law, double before, double after) {
        double passing = before - after;
        double chance = passing > 1e-12 ? (before - law.survival(glimpse.age())) / passing : 0.5;
        return glimpse.logProbability(Math.min(1 - 1e-9, Math.max(1e-9, chance)));
    }

    private double glimpseAfterLast(Glimpse glimpse, PassingLaw law) {
        return glimpse.logProbability(law.readAsPassed(law.survival(last().age()), law.survival(glimpse.age())));
    }

    /** Joins states into evidence; glimpses lie between the looks that counted. */
    static BoundaryEvidence of(List<PassingState> states, List<Double> goneWaiting, GlimpseFinder glimpses) {
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
        return new BoundaryEvidence(states, steps, glimpses.between(last, Double.POSITIVE_INFINITY, last.waiting()));
    }

    /** Finds what a partial look said between two counts. */
    @FunctionalInterface
    interface GlimpseFinder {
        /** The glimpse to use after one state and before an age, {@code candidates} animals being in question. */
        Optional<Glimpse> between(PassingState from, double toAge, double candidates);
    }
}
