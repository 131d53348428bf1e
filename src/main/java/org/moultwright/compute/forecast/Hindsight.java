package org.moultwright.compute.forecast;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.moultwright.compute.stage.NormalTails;
import org.moultwright.domain.Stage;

/**
 * What forecasts of completed broods would have been worth, each made part of the way and learning only from the
 * broods before it: by how much the next one's intervals ought to be wider or narrower than the model says.
 *
 * <p>A forecast that is as sure as it should be has outcomes whose probability integral transform is uniform, and
 * normal scores of it with a mean square of 1. Broods scatter, so their mean square is drawn towards 1 as by
 * {@link #BROODS_BELIEVED} broods with just that (assumption); forecasts of one brood err together and count once. A
 * brood before which there was none to learn from does not count: what it tells is how sure the first belief was.
 */
final class Hindsight {
    private static final double BROODS_BELIEVED = 5;

    /** How much of the believed time to the last stage had passed when a forecast would have been made. */
    private static final List<Double> SHARES = List.of(0.55, 0.75);

    private static final int MOST_BROODS = 6;
    private static final double UTMOST = 0.005;
    private static final long SEED = 1;

    private final Belief belief;
    private final List<Stage> boundaries;

    Hindsight(Belief belief, List<Stage> boundaries) {
        this.belief = belief;
        this.boundaries = boundaries;
    }

    /**
     * The factor on the width of the next brood's intervals.
     *
     * @param broods completed ones at their last look, in order of time
     * @param lessonsBefore for each, what the broods before it taught
     */
    double widthFactor(List<BroodSight> broods, List<Lessons> lessonsBefore) {
        double[] squares = IntStream.range(Math.max(0, broods.size() - MOST_BROODS), broods.size())
                .mapToObj(brood -> meanSquare(broods.get(brood), lessonsBefore.get(brood)))
                .flatMapToDouble(OptionalDouble::stream)
                .toArray();
        double sum = BROODS_BELIEVED;
        for (double square : squares) {
            sum += square;
        }
        return Math.sqrt(sum / (BROODS_BELIEVED + squares.length));
    }

    private OptionalDouble meanSquare(BroodSight brood, Lessons lessons) {
        if (lessons.isEmpty()) {
            return OptionalDouble.empty();
        }
        List<Double> squares = new ArrayList<>();
        forecast(brood, brood.asOf(), Lessons.NONE)
                .ifPresent(truth -> momentsOf(brood)
                        .flatMap(at -> forecast(brood, at, lessons).stream())
                        .forEach(forecast -> squares.addAll(squaredScores(forecast, truth))));
        return squares.stream().mapToDouble(Double::doubleValue).average();
    }

    /** When forecasts would have been made. */
    private Stream<Instant> momentsOf(BroodSight brood) {
        double last = belief.medianWarmDays()[boundaries.size() - 1];
        return SHARES.stream().flatMap(share -> brood.lived().get(0).reached(share * last).stream());
    }

    private Optional<BroodForecast> forecast(BroodSight brood, Instant asOf, Lessons lessons) {
        ForecastQuestion question = new ForecastQuestion(brood.record(), asOf, PastBroods.NONE, SEED, List.of());
        return Forecaster.prepare(question, belief, boundaries, lessons)
                .map(prepared -> prepared.under(ClimatePlan.AS_IT_IS));
    }

    /** Of the dates by which half were to enter the last stage, where that lay ahead and has come. */
    private List<Double> squaredScores(BroodForecast forecast, BroodForecast truth) {
        List<Double> squares = new ArrayList<>();
        for (TrayForecast tray : forecast.trays()) {
            Optional<Instant> was = half(truth, tray.tray())
                    .filter(interval -> !interval.p90().isAfter(truth.asOf()))
                    .map(InstantInterval::p50)
                    .filter(instant -> instant.isAfter(forecast.asOf()));
            was.flatMap(instant -> half(forecast, tray.tray()).map(said -> squaredScore(said.chanceBy(instant))))
                    .ifPresent(squares::add);
        }
        return squares;
    }

    private Optional<InstantInterval> half(BroodForecast forecast, String tray) {
        Stage last = boundaries.get(boundaries.size() - 1);
        return forecast.tray(tray).stream()
                .flatMap(found -> found.moults().stream())
                .filter(moult -> moult.into() == last)
                .map(MoultForecast::half)
                .findFirst();
    }

    private static double squaredScore(double probability) {
        double score = NormalTails.inverseSurvival(Math.max(UTMOST, Math.min(1 - UTMOST, probability)));
        return score * score;
    }
}
