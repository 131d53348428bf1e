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
    private static final double NO_ROOM = 1e-12;

    /** What two animals of a tray have in common beyond the model, as a guard against too narrow answers (assumption). */
    public static final double CORRELATION = 0.005;

    private final List<PassingState> states;
    private final List<PassingStep> steps;
    private final List<Glimpse> laterGlimpses;
    private final OptionalDouble firstSightAge;

    BoundaryEvidence(
            List<PassingState> states,
            List<PassingStep> steps,
            List<Glimpse> laterGlimpses,
            OptionalDouble firstSightAge) {
        this.states = List.copyOf(states);
        this.steps = steps.stream().filter(step -> step.waiting() > 0).toList();
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
            if (!step.glimpses().isEmpty()) {
                sum += glimpsesBetween(step.glimpses(), law, before, survival);
            }
        }
        return laterGlimpses.isEmpty() ? sum : sum + glimpsesAfterLast(law);
    }

    /** How far the newly passed of all steps lie from those a law expects: Pearson's χ², parts of animals rounded. */
    double scatter(PassingLaw law) {
        return steps.stream()
                .mapToDouble(step -> step.scatter(Math.rint(step.passed()), step.chance(law)))
                .sum();
    }

    /** The same of newly passed drawn from the law. */
    double replicatedScatter(PassingLaw law, Chance chance) {
        return steps.stream()
                .mapToDouble(step -> {
                    double passing = step.chance(law);
                    int passed = chance.betaBinomial((int) Math.rint(step.waiting()), passing, CORRELATION);
                    return step.scatter(passed, passing);
                })
                .sum();
    }

    /** Of those that passed within the step, some had by each glimpse. */
    private static double glimpsesBetween(List<Glimpse> glimpses, PassingLaw law, double before, double after) {
        double passing = before - after;
        return HiddenPasses.logProbability(
                glimpses.get(0).candidates(),
                glimpses,
                glimpses.stream()
                        .mapToDouble(
                                glimpse -> passing > NO_ROOM ? (before - law.survival(glimpse.age())) / passing : 0.5)
                        .map(BoundaryEvidence::inside)
                        .toArray());
    }

    private double glimpsesAfterLast(PassingLaw law) {
        double before = law.survival(last().age());
        return HiddenPasses.logProbability(
                laterGlimpses.get(0).candidates(),
                laterGlimpses,
                laterGlimpses.stream()
                        .mapToDouble(glimpse -> law.readAsPassed(before, law.survival(glimpse.age())))
                        .toArray());
    }

    private static double inside(double chance) {
        return Math.min(1 - 1e-9, Math.max(1e-9, chance));
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
