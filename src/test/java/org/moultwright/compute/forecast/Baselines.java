package org.moultwright.compute.forecast;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.moultwright.compute.rate.RateCurve;

/**
 * What a keeper reckons without a model: by counting days as earlier broods took (A), warm-days at the set-point
 * as they took (B), and B started anew from the last boundary half the brood was seen to pass (C).
 *
 * @param calendarDay the day by A
 * @param setPointDay the day by B
 * @param restartedDay the day by C
 */
record Baselines(double calendarDay, double setPointDay, double restartedDay) {

    static Baselines of(SimulatedBrood brood, double asOfDay, List<SimulatedBrood> earlier) {
        int last = brood.believed().length - 1;
        SimulatedPace pace = pace(brood);
        double setPointDays = meanOr(earlier, last, Baselines::setPointDaysTo, brood.believed()[last]);
        double restarted = pace.dayAtAge(brood.laidDay(), setPointDays);
        for (int k = 0; k < last; k++) {
            double seen = brood.halfDay(k);
            if (seen > brood.pulledDay() && seen < asOfDay) {
                double stage = setPointDays - meanOr(earlier, k, Baselines::setPointDaysTo, brood.believed()[k]);
                restarted = pace.dayAtAge(seen, stage);
            }
        }
        return new Baselines(
                brood.laidDay() + meanOr(earlier, last, Baselines::calendarDaysTo, brood.believed()[last]),
                pace.dayAtAge(brood.laidDay(), setPointDays),
                restarted);
    }

    private static SimulatedPace pace(SimulatedBrood brood) {
        return new SimulatedPace(
                RateCurve.of(SimulatedBrood.STATED_RATE).relativeTo(SimulatedBrood.REFERENCE_CELSIUS),
                brood.room()::setPointCelsius);
    }

    private static double calendarDaysTo(SimulatedBrood brood, int boundary) {
        return brood.halfDay(boundary) - brood.laidDay();
    }

    private static double setPointDaysTo(SimulatedBrood brood, int boundary) {
        return pace(brood).ageAtDay(brood.laidDay(), brood.halfDay(boundary));
    }

    private interface DaysTo {
        double of(SimulatedBrood brood, int boundary);
    }

    private static double meanOr(List<SimulatedBrood> earlier, int boundary, DaysTo days, double believed) {
        ToDoubleFunction<SimulatedBrood> toBoundary = brood -> days.of(brood, boundary);
        return earlier.stream()
                .mapToDouble(toBoundary)
                .filter(Double::isFinite)
                .average()
                .orElse(believed);
    }
}
