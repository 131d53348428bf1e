package org.moultwright.compute.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.moultwright.compute.stage.Chance;
import org.moultwright.exchange.TimingsFile;

/**
 * Forecasts invented broods from what was known part of the way and scores the moult into the last stage
 * against their truth. A keeper's broods follow one another, each learned from by the later ones.
 */
final class BackTest {
    static final List<Double> SHARES = List.of(0.25, 0.5, 0.75);
    private static final int LAST = 2;

    private final Map<String, BackTestScore> scores = new TreeMap<>();

    private BackTest() {}

    /**
     * A test over many keepers.
     *
     * @param simulator where they come from
     * @param variation how many times the usual variation broods of one keeper show
     */
    static BackTest run(TriedKeeper.Simulator simulator, int keepers, int broodsEach, double variation, long seed) {
        List<BackTest> parts = IntStream.range(0, keepers)
                .parallel()
                .mapToObj(keeper -> {
                    BackTest part = new BackTest();
                    part.follow("S" + keeper, broodsEach, simulator.keeper(variation, new Chance(seed + keeper)));
                    return part;
                })
                .toList();
        BackTest test = new BackTest();
        parts.forEach(
                part -> part.scores.forEach((name, score) -> test.score(name).addAll(score)));
        return test;
    }

    BackTestScore at(double share) {
        return score("at " + share);
    }

    String table() {
        StringBuilder table = new StringBuilder(BackTestScore.HEADING);
        scores.forEach((name, score) -> table.append(score.row(name)));
        return table.toString();
    }

    private void follow(String name, int broods, TriedKeeper keeper) {
        List<TriedBrood> earlier = new ArrayList<>();
        for (int brood = 0; brood < broods; brood++) {
            TriedBrood simulated = keeper.next(name + "-" + brood);
            PastBroods past =
                    PastBroods.of(earlier.stream().map(TriedBrood::record).toList());
            for (double share : SHARES) {
                BackTestScore score = scored(simulated, share, past, earlier);
                score("at " + share).addAll(score);
                score("after " + brood).addAll(score);
            }
            earlier.add(simulated);
        }
    }

    private static BackTestScore scored(TriedBrood brood, double share, PastBroods past, List<TriedBrood> earlier) {
        BroodForecast forecast = new Forecaster(TimingsFile.shipped())
                .forecast(
                        new ForecastQuestion(brood.record(), TriedBrood.at(brood.asOfDay(share)), past, 7, List.of()));
        Baselines baselines = Baselines.of(brood, share, earlier);
        BackTestScore score = new BackTestScore();
        for (int tray = 0; tray < brood.trayCount(); tray++) {
            int index = tray;
            forecast.trays().get(tray).moults().stream()
                    .filter(moult -> moult.into() == brood.record().brood().lastStage())
                    .filter(moult -> !Double.isNaN(brood.trueDay(index, LAST, Milestone.HALF)))
                    .forEach(moult -> score.addMoult(brood, index, LAST, moult, baselines));
        }
        forecast.yield().ifPresent(yield -> score.addYield(brood, yield, baselines));
        return score;
    }

    private BackTestScore score(String name) {
        return scores.computeIfAbsent(name, unseen -> new BackTestScore());
    }
}
