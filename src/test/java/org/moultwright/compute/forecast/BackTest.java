package org.moultwright.compute.forecast;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.moultwright.compute.stage.Chance;
import org.moultwright.domain.BroodRecord;

/**
 * Forecasts invented broods from what was known part of the way and scores the moult into the last stage
 * against their truth. Keepers follow one another brood by brood, each learning from the earlier ones.
 */
final class BackTest {
    static final List<Double> SHARES = List.of(0.25, 0.5, 0.75);
    private static final int LAST = 2;
    private static final double SPECIES_SD = 0.08;

    private final Map<Double, Score> scores = new TreeMap<>();

    static BackTest run(int keepers, int broodsEach, long seed) {
        BackTest test = new BackTest();
        for (int keeper = 0; keeper < keepers; keeper++) {
            Chance chance = new Chance(seed + keeper);
            double species = Math.exp(SPECIES_SD * chance.normal());
            List<BroodRecord> earlier = new ArrayList<>();
            for (int brood = 0; brood < broodsEach; brood++) {
                SimulatedBrood simulated = SimulatedBrood.of("S" + keeper + "-" + brood, species, chance);
                SHARES.forEach(share -> test.score(simulated, share, List.copyOf(earlier)));
                earlier.add(simulated.record());
            }
        }
        return test;
    }

    Score at(double share) {
        return scores.get(share);
    }

    String table() {
        StringBuilder table = new StringBuilder(
                "share     n  half-mae  cover80   bias  most-mae  first-mae      A      B  yield-err%  yield-cover\n");
        scores.forEach((share, score) -> table.append(score.row(share)));
        return table.toString();
    }

    private void score(SimulatedBrood brood, double share, List<BroodRecord> earlier) {
        BroodForecast forecast = new Forecaster()
                .forecast(new ForecastQuestion(brood.record(), brood.asOf(share), earlier, 7, List.of()));
        Score score = scores.computeIfAbsent(share, unseen -> new Score());
        for (int tray = 0; tray < brood.trays().size(); tray++) {
            int index = tray;
            forecast.trays().get(tray).moults().stream()
                    .filter(moult -> moult.into() == SimulatedKeeper.STAGES.get(LAST + 1))
                    .filter(moult -> !Double.isNaN(brood.trueDay(index, LAST, Milestone.HALF)))
                    .forEach(moult -> score.addMoult(brood, index, moult));
        }
        forecast.yield().ifPresent(yield -> score.addYield(brood, yield));
    }

    /** Errors gathered at one share of the time, in days and in percent of the animals. */
    static final class Score {
        private final Map<Milestone, List<Double>> errors = new EnumMap<>(Milestone.class);
        private final List<Double> covered = new ArrayList<>();
        private final List<Double> byCalendar = new ArrayList<>();
        private final List<Double> bySetPoint = new ArrayList<>();
        private final List<Double> yieldErrors = new ArrayList<>();
        private final List<Double> yieldCovered = new ArrayList<>();

        double halfError() {
            return meanAbsolute(errors.get(Milestone.HALF));
        }

        double coverage() {
            return meanAbsolute(covered);
        }

        double calendarError() {
            return meanAbsolute(byCalendar);
        }

        double setPointError() {
            return meanAbsolute(bySetPoint);
        }

        private void addMoult(SimulatedBrood brood, int tray, MoultForecast moult) {
            double half = brood.trueDay(tray, LAST, Milestone.HALF);
            add(Milestone.HALF, moult.half(), half);
            add(Milestone.MOST, moult.most(), brood.trueDay(tray, LAST, Milestone.MOST));
            add(Milestone.FIRST, moult.first(), brood.trueDay(tray, LAST, Milestone.FIRST));
            covered.add(
                    day(moult.half().p10()) <= half && half <= day(moult.half().p90()) ? 1.0 : 0.0);
            byCalendar.add(brood.dayByCalendar(LAST) - half);
            bySetPoint.add(brood.dayBySetPoint(LAST) - half);
        }

        private void addYield(SimulatedBrood brood, CountInterval yield) {
            double truth = brood.trueYield();
            yieldErrors.add(100 * (yield.p50() - truth) / brood.animals());
            yieldCovered.add(yield.p10() <= truth && truth <= yield.p90() ? 1.0 : 0.0);
        }

        private void add(Milestone milestone, InstantInterval interval, double truth) {
            errors.computeIfAbsent(milestone, unseen -> new ArrayList<>()).add(day(interval.p50()) - truth);
        }

        private String row(double share) {
            double bias = errors.get(Milestone.HALF).stream()
                    .mapToDouble(Double::doubleValue)
                    .average()
                    .orElse(0);
            return "%5.2f %5d %9.2f %8.3f %6.2f %9.2f %10.2f %6.2f %6.2f %11.2f %12.3f%n"
                    .formatted(
                            share,
                            covered.size(),
                            halfError(),
                            coverage(),
                            bias,
                            meanAbsolute(errors.get(Milestone.MOST)),
                            meanAbsolute(errors.get(Milestone.FIRST)),
                            calendarError(),
                            setPointError(),
                            meanAbsolute(yieldErrors),
                            meanAbsolute(yieldCovered));
        }

        private static double day(Instant instant) {
            return Duration.between(SimulatedRoom.START, instant).toMillis() / 86_400_000.0;
        }

        private static double meanAbsolute(List<Double> values) {
            return values.stream().mapToDouble(Math::abs).average().orElse(Double.NaN);
        }
    }
}
