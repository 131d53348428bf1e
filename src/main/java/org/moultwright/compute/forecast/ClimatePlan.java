package org.moultwright.compute.forecast;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;

/**
 * What the place of the animals is to be set to from now on. Before the first step it stays as it is.
 *
 * @param steps in order of time
 */
public record ClimatePlan(List<Step> steps) {
    /** Nothing is changed. */
    public static final ClimatePlan AS_IT_IS = new ClimatePlan(List.of());

    /**
     * A change of the set-point.
     *
     * @param from when
     * @param temperatureCelsius to what, in °C
     */
    public record Step(Instant from, double temperatureCelsius) {}

    public ClimatePlan {
        steps = steps.stream().sorted(Comparator.comparing(Step::from)).toList();
    }

    /** One set-point from an instant on. */
    public static ClimatePlan from(Instant instant, double temperatureCelsius) {
        return new ClimatePlan(List.of(new Step(instant, temperatureCelsius)));
    }

    /** The set-point at an instant, where it has been another so far. */
    double celsiusAt(Instant instant, double soFarCelsius) {
        double celsius = soFarCelsius;
        for (Step step : steps) {
            celsius = step.from().isAfter(instant) ? celsius : step.temperatureCelsius();
        }
        return celsius;
    }
}
