package org.moultwright.compute.forecast;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.moultwright.compute.learning.KindLearner;
import org.moultwright.compute.stage.Chance;
import org.moultwright.compute.stage.PlainMetropolis;
import org.moultwright.compute.stage.PosteriorDraws;
import org.moultwright.compute.stage.StagePrior;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Check;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.Stage;
import org.moultwright.exchange.TimingsFile;

/**
 * How long forecasts take: medians of many runs, beside a plain random walk of the same effective size in the
 * same run. The only argument is the number of runs (20).
 */
public final class ForecastBenchmark {
    private static final int TRAYS = 4;
    private static final int CHECKS = 40;
    private static final int ROOM = 10;
    private static final int ROOM_DAYS = 90;
    private static final int WALK = 40_000;

    private final int runs;
    private final SimulatedBrood brood = broodOfFourTrays();
    private final Instant now = brood.asOf(0.6);
    private final BroodRecord record = withChecks(brood.record().until(now), CHECKS);

    private ForecastBenchmark(int runs) {
        this.runs = runs;
    }

    public static void main(String[] arguments) throws InterruptedException, ExecutionException {
        new ForecastBenchmark(arguments.length > 0 ? Integer.parseInt(arguments[0]) : 20).run();
    }

    private void run() throws InterruptedException, ExecutionException {
        double refit = median(() -> forecast(record));
        System.out.printf("refit, %d trays, %d checks, hourly readings, one thread: %.1f ms%n", TRAYS, CHECKS, refit);
        PreparedForecast prepared =
                new Forecaster(TimingsFile.shipped()).prepare(question(record)).orElseThrow();
        System.out.printf("what-if step: %.1f ms%n", median(() -> prepared.under(ClimatePlan.from(now, 26))));
        room();
        baseline();
        for (int times : new int[] {1, 4, 16}) {
            System.out.printf(
                    "%2d x checks: %.1f ms;  %2d x readings: %.1f ms%n",
                    times,
                    median(() -> forecast(withChecks(record, CHECKS * times))),
                    times,
                    median(() -> forecast(
                            withReadingsEvery(record, Duration.ofMinutes(60).dividedBy(times)))));
        }
    }

    private void room() throws InterruptedException, ExecutionException {
        Instant end = TriedBrood.START.plus(Duration.ofDays(ROOM_DAYS));
        BroodRecord whole = withReadingsEvery(withChecks(brood.record().until(end), CHECKS), Duration.ofMinutes(1));
        List<ForecastQuestion> room =
                Collections.nCopies(ROOM, new ForecastQuestion(whole, end, PastBroods.NONE, 7, List.of()));
        ForkJoinPool two = new ForkJoinPool(2);
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < Math.max(3, runs / 4); i++) {
            long start = System.nanoTime();
            two.submit(() -> room.parallelStream().forEach(new Forecaster(TimingsFile.shipped())::forecast))
                    .get();
            times.add(millisSince(start));
        }
        two.shutdown();
        System.out.printf(
                "room of %d trays, %d days, %d readings a brood, two threads: %.0f ms%n",
                ROOM * TRAYS,
                ROOM_DAYS,
                whole.readings().values().iterator().next().size(),
                middle(times));
    }

    private void baseline() {
        List<Stage> boundaries = Boundaries.of(record);
        Belief belief = Belief.of(record.brood(), boundaries, TimingsFile.shipped());
        BroodSight sight = BroodSight.of(record, now, boundaries, belief).orElseThrow();
        StagePrior prior = KindLearner.next(belief.kind(sight.scaleSd(), 0), belief.lengthShares(), List.of());
        PosteriorDraws draws = PosteriorDraws.of(sight.usableHistories(), prior, 1000, 1);
        double effective = draws.effectiveShare() * 1500;
        double sampling = median(() -> PosteriorDraws.of(sight.usableHistories(), prior, 1000, 1));
        PlainMetropolis walk = new PlainMetropolis(sight.usableHistories(), prior);
        long start = System.nanoTime();
        double walked = walk.effectiveDraws(WALK);
        double walking = millisSince(start) * effective / walked;
        System.out.printf(
                "posterior worth %.0f draws: %.1f ms; plain random walk for as many: %.0f ms, %.0f times as long%n",
                effective, sampling, walking, walking / sampling);
    }

    private BroodForecast forecast(BroodRecord asked) {
        return new Forecaster(TimingsFile.shipped()).forecast(question(asked));
    }

    private ForecastQuestion question(BroodRecord asked) {
        return new ForecastQuestion(asked, now, PastBroods.NONE, 7, List.of());
    }

    private double median(Runnable work) {
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < 2 * runs; i++) {
            long start = System.nanoTime();
            work.run();
            if (i >= runs) {
                times.add(millisSince(start));
            }
        }
        return middle(times);
    }

    private static double middle(List<Double> times) {
        return times.stream().sorted().toList().get(times.size() / 2);
    }

    private static double millisSince(long start) {
        return (System.nanoTime() - start) / 1e6;
    }

    private static SimulatedBrood broodOfFourTrays() {
        for (long seed = 1; ; seed++) {
            Chance chance = new Chance(seed);
            SimulatedBrood found = SimulatedBrood.of("B", SimulatedHusbandry.of(chance), 1, chance);
            if (found.trays().size() == TRAYS) {
                return found;
            }
        }
    }

    /** The latest checks of a record; where it has too few, each again a minute later and so on. */
    private static BroodRecord withChecks(BroodRecord record, int count) {
        List<Check> known = record.checks();
        List<Check> checks = IntStream.range(0, count)
                .mapToObj(i -> {
                    Check check = known.get(known.size() - 1 - i % known.size());
                    Instant at = check.at().minus(Duration.ofMinutes(i / known.size()));
                    return new Check(new UUID(1, i), check.tray(), at, check.looks());
                })
                .sorted(Comparator.comparing(Check::at))
                .toList();
        return new BroodRecord(
                record.brood(),
                record.ledger(),
                checks,
                record.stays(),
                record.probeStays(),
                record.setPoints(),
                record.readings(),
                record.mould(),
                record.care(),
                record.pots(),
                record.runUp());
    }

    /** Readings straight between the known ones, as often as asked. */
    private static BroodRecord withReadingsEvery(BroodRecord record, Duration step) {
        ReadingSeries hourly = record.readings().values().iterator().next();
        ReadingSeries.Builder dense = new ReadingSeries.Builder();
        for (int i = 0; i + 1 < hourly.size(); i++) {
            long from = hourly.epochMillis(i);
            long to = Math.min(
                    hourly.epochMillis(i + 1), from + Duration.ofHours(1).toMillis());
            for (long at = from; at < to; at += step.toMillis()) {
                double share = (double) (at - from) / (hourly.epochMillis(i + 1) - from);
                double rise = hourly.temperatureCelsius(i + 1) - hourly.temperatureCelsius(i);
                dense.add(at, hourly.temperatureCelsius(i) + share * rise, Double.NaN, Quality.GOOD);
            }
        }
        return record.withReadings(Map.of("probe", dense.build()));
    }
}
