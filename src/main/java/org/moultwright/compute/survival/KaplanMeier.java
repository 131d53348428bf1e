package org.moultwright.compute.survival;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The product-limit estimate of survival (Kaplan &amp; Meier 1958) with Greenwood's standard errors.
 *
 * <p>An animal taken out at the very time of an event counts as at risk of it. Immutable.
 */
public final class KaplanMeier {
    private final List<SurvivalStep> steps;

    private KaplanMeier(List<SurvivalStep> steps) {
        this.steps = List.copyOf(steps);
    }

    public static KaplanMeier of(List<Lifetime> lifetimes) {
        List<Lifetime> inOrder = lifetimes.stream()
                .sorted(Comparator.comparingDouble(Lifetime::time))
                .toList();
        List<SurvivalStep> steps = new ArrayList<>();
        double survival = 1;
        double greenwoodSum = 0;
        int start = 0;
        while (start < inOrder.size()) {
            int end = start;
            int events = 0;
            double time = inOrder.get(start).time();
            while (end < inOrder.size() && inOrder.get(end).time() == time) {
                events += inOrder.get(end).isEvent() ? 1 : 0;
                end++;
            }
            if (events > 0) {
                double atRisk = inOrder.size() - start;
                survival *= 1 - events / atRisk;
                greenwoodSum += events / (atRisk * (atRisk - events));
                double standardError = survival > 0 ? survival * Math.sqrt(greenwoodSum) : Double.NaN;
                steps.add(new SurvivalStep(time, inOrder.size() - start, events, survival, standardError));
            }
            start = end;
        }
        return new KaplanMeier(steps);
    }

    /** One step for each time at which an event fell, in order. */
    public List<SurvivalStep> steps() {
        return steps;
    }

    /** The share surviving a time. */
    public double survivalAt(double time) {
        double survival = 1;
        for (SurvivalStep step : steps) {
            survival = step.time() <= time ? step.survival() : survival;
        }
        return survival;
    }

    /** The first time by which at least half have had the event, empty if that never comes. */
    public OptionalDouble median() {
        return steps.stream()
                .filter(step -> step.survival() <= 0.5)
                .mapToDouble(SurvivalStep::time)
                .findFirst();
    }
}
