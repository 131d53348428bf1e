package org.moultwright.compute.stage;

import java.util.List;

/**
 * The steps from look to look of one tray at one boundary, made ready to be weighed against thousands of laws: the
 * logs of ages are taken once, and a step in which a law lets nobody pass costs no log at all. Immutable.
 */
final class PassingSteps {
    private static final double NO_ROOM = 1e-12;

    /** A chance to pass this much smaller than that of a misread makes no difference. */
    private static final double NEGLIGIBLE = 1e-10;

    private final List<PassingStep> steps;
    private final boolean[] goesOn;
    private final LoggedAge[] from;
    private final LoggedAge[] to;
    private final double[] weight;
    private final double[] logOfMisreads;

    PassingSteps(List<PassingStep> all) {
        this.steps = all.stream().filter(step -> step.waiting() > 0).toList();
        int size = steps.size();
        this.goesOn = new boolean[size];
        this.from = new LoggedAge[size];
        this.to = new LoggedAge[size];
        this.weight = new double[size];
        this.logOfMisreads = new double[size];
        for (int i = 0; i < size; i++) {
            PassingStep step = steps.get(i);
            goesOn[i] = i > 0 && step.fromAge() == steps.get(i - 1).toAge();
            from[i] = LoggedAge.of(step.fromAge());
            to[i] = LoggedAge.of(step.toAge());
            weight[i] = Math.min(1, 1 / (1 + (step.waiting() - 1) * BoundaryEvidence.CORRELATION));
            logOfMisreads[i] = logOf(step, PassingLaw.MISREAD);
        }
    }

    /** How likely they are under a law, as a log, up to a constant. */
    double logLikelihood(PassingLaw law) {
        double sum = 0;
        double survival = 1;
        for (int i = 0; i < weight.length; i++) {
            double before = goesOn[i] ? survival : law.survival(from[i]);
            survival = law.survival(to[i]);
            double passing = law.passedIfWaiting(before, survival);
            sum += weight[i]
                    * (passing < NEGLIGIBLE ? logOfMisreads[i] : logOf(steps.get(i), PassingLaw.readAsPassed(passing)));
            List<Glimpse> glimpses = steps.get(i).glimpses();
            if (!glimpses.isEmpty()) {
                sum += glimpsesBetween(glimpses, law, before, survival);
            }
        }
        return sum;
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
                    int passed =
                            chance.betaBinomial((int) Math.rint(step.waiting()), passing, BoundaryEvidence.CORRELATION);
                    return step.scatter(passed, passing);
                })
                .sum();
    }

    private static double logOf(PassingStep step, double chance) {
        return step.passed() * Math.log(chance) + (step.waiting() - step.passed()) * Math.log1p(-chance);
    }

    /** Of those that passed within the step, some had by each glimpse. */
    private static double glimpsesBetween(List<Glimpse> glimpses, PassingLaw law, double before, double after) {
        double passing = before - after;
        return HiddenPasses.logProbability(
                glimpses,
                glimpses.stream()
                        .mapToDouble(
                                glimpse -> passing > NO_ROOM ? (before - law.survival(glimpse.age())) / passing : 0.5)
                        .map(PassingSteps::inside)
                        .toArray());
    }

    private static double inside(double chance) {
        return Math.min(1 - 1e-9, Math.max(1e-9, chance));
    }
}
