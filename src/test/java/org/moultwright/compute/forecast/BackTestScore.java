package org.moultwright.compute.forecast;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Errors of many forecasts against the truth, in days and in percent of the animals. Not safe to share. */
final class BackTestScore {
    static final String HEADING =
            "            n   half  cover  bias   most  cover  first  cover      A      B      C  yield%  cover      D      E\n";

    private final Map<Milestone, List<Double>> errors = new EnumMap<>(Milestone.class);
    private final Map<Milestone, List<Double>> covered = new EnumMap<>(Milestone.class);
    private final Map<Milestone, List<Double>> probabilities = new EnumMap<>(Milestone.class);
    private final List<Double> byCalendar = new ArrayList<>();
    private final List<Double> bySetPoint = new ArrayList<>();
    private final List<Double> byRestart = new ArrayList<>();
    private final List<Double> yieldsOfAll = new ArrayList<>();
    private final List<Double> yieldsOfAlive = new ArrayList<>();
    private final List<Double> yieldErrors = new ArrayList<>();
    private final List<Double> yieldCovered = new ArrayList<>();

    double error(Milestone milestone) {
        return meanAbsolute(errors.get(milestone));
    }

    double coverage(Milestone milestone) {
        return meanAbsolute(covered.get(milestone));
    }

    /** For each event, the probability forecast for it to have happened by when it did. */
    List<Double> probabilities(Milestone milestone) {
        return List.copyOf(list(probabilities, milestone));
    }

    double calendarError() {
        return meanAbsolute(byCalendar);
    }

    double setPointError() {
        return meanAbsolute(bySetPoint);
    }

    double restartedError() {
        return meanAbsolute(byRestart);
    }

    double yieldErrorOfAll() {
        return meanAbsolute(yieldsOfAll);
    }

    double yieldError() {
        return meanAbsolute(yieldErrors);
    }

    void addMoult(TriedBrood brood, int tray, int boundary, MoultForecast moult, Baselines baselines) {
        add(Milestone.FIRST, moult.first(), brood.trueDay(tray, boundary, Milestone.FIRST));
        add(Milestone.HALF, moult.half(), brood.trueDay(tray, boundary, Milestone.HALF));
        add(Milestone.MOST, moult.most(), brood.trueDay(tray, boundary, Milestone.MOST));
        double half = brood.trueDay(tray, boundary, Milestone.HALF);
        byCalendar.add(baselines.calendarDay() - half);
        bySetPoint.add(baselines.setPointDay() - half);
        byRestart.add(baselines.restartedDay() - half);
    }

    void addYield(TriedBrood brood, CountInterval yield, Baselines baselines) {
        double truth = brood.trueYield();
        yieldsOfAll.add(100 * (baselines.yieldOfAll() - truth) / brood.animals());
        yieldsOfAlive.add(100 * (baselines.yieldOfAlive() - truth) / brood.animals());
        yieldErrors.add(100 * (yield.p50() - truth) / brood.animals());
        yieldCovered.add(yield.p10() <= truth && truth <= yield.p90() ? 1.0 : 0.0);
    }

    void addAll(BackTestScore other) {
        for (Milestone milestone : Milestone.values()) {
            list(errors, milestone).addAll(list(other.errors, milestone));
            list(covered, milestone).addAll(list(other.covered, milestone));
            list(probabilities, milestone).addAll(list(other.probabilities, milestone));
        }
        byCalendar.addAll(other.byCalendar);
        bySetPoint.addAll(other.bySetPoint);
        byRestart.addAll(other.byRestart);
        yieldsOfAll.addAll(other.yieldsOfAll);
        yieldsOfAlive.addAll(other.yieldsOfAlive);
        yieldErrors.addAll(other.yieldErrors);
        yieldCovered.addAll(other.yieldCovered);
    }

    String row(String name) {
        double bias = errors.get(Milestone.HALF).stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElse(0);
        return "%-8s %4d %6.2f %6.3f %5.2f %6.2f %6.3f %6.2f %6.3f %6.2f %6.2f %6.2f %7.2f %6.3f %6.2f %6.2f%n"
                .formatted(
                        name,
                        byCalendar.size(),
                        error(Milestone.HALF),
                        coverage(Milestone.HALF),
                        bias,
                        error(Milestone.MOST),
                        coverage(Milestone.MOST),
                        error(Milestone.FIRST),
                        coverage(Milestone.FIRST),
                        calendarError(),
                        setPointError(),
                        restartedError(),
                        yieldError(),
                        meanAbsolute(yieldCovered),
                        meanAbsolute(yieldsOfAll),
                        meanAbsolute(yieldsOfAlive));
    }

    private void add(Milestone milestone, InstantInterval interval, double truth) {
        list(errors, milestone).add(TriedBrood.day(interval.p50()) - truth);
        list(probabilities, milestone).add(interval.chanceBy(TriedBrood.at(truth)));
        list(covered, milestone)
                .add(TriedBrood.day(interval.p10()) <= truth && truth <= TriedBrood.day(interval.p90()) ? 1.0 : 0.0);
    }

    private static List<Double> list(Map<Milestone, List<Double>> lists, Milestone milestone) {
        return lists.computeIfAbsent(milestone, unseen -> new ArrayList<>());
    }

    private static double meanAbsolute(List<Double> values) {
        return values.stream().mapToDouble(Math::abs).average().orElse(Double.NaN);
    }
}
