package org.moultwright.compute.forecast;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.moultwright.compute.climate.LivedTemperature;
import org.moultwright.compute.rate.RateCurve;
import org.moultwright.compute.stage.Chance;

/**
 * How warm-days may add up from now on: many paths, each a row of days.
 *
 * <p>A day repeats one of the last three weeks' courses about the set-point of its day, two days in a row at a
 * time so that a warm day keeps its neighbour; each path is off by a constant as well. Where nothing was
 * measured every day is the set-point itself.
 */
final class FutureClimate {
    private static final int DAYS_REMEMBERED = 21;
    private static final int BLOCK_DAYS = 2;
    private static final Duration HALF_A_DAY = Duration.ofHours(12);
    private static final int HORIZON_DAYS = 200;
    private static final int PATHS = 200;

    /** A path's constant error as a share of the daily rate's own standard deviation (assumption). */
    private static final double OFFSET_SHARE = 0.35;

    /** The least constant error, in warm-days a day: no set-point is kept for ever (assumption). */
    private static final double LEAST_OFFSET = 0.02;

    /** Where it is too cold for any development, so slow a one keeps dates finite. */
    private static final double LEAST_RATE = 1e-3;

    private final double[][] paths;

    private FutureClimate(double[][] paths) {
        this.paths = paths;
    }

    /**
     * What may come after what was lived.
     *
     * @param plan what the place is to be set to
     */
    static FutureClimate after(LivedTemperature lived, RateCurve rate, ClimatePlan plan, long seed) {
        double[][] rates = ratesByDay(lived, rate, plan);
        double offsetSd = Math.max(LEAST_OFFSET, OFFSET_SHARE * standardDeviation(rates[0]));
        Chance chance = new Chance(seed);
        double[][] paths = new double[PATHS][];
        for (int i = 0; i < PATHS; i++) {
            paths[i] = path(rates, offsetSd * chance.normal(), chance);
        }
        return new FutureClimate(paths);
    }

    /** For each day to come, the rate it may have: one for each day remembered. */
    private static double[][] ratesByDay(LivedTemperature lived, RateCurve rate, ClimatePlan plan) {
        List<double[]> residuals = lived.residualDays(DAYS_REMEMBERED);
        Map<Double, double[]> byNominal = new HashMap<>();
        double[][] rates = new double[HORIZON_DAYS][];
        for (int day = 0; day < HORIZON_DAYS; day++) {
            Instant noon = lived.until().plus(Duration.ofDays(day)).plus(HALF_A_DAY);
            double nominal = plan.celsiusAt(noon, lived.nominalCelsius());
            rates[day] = byNominal.computeIfAbsent(nominal, celsius -> dailyRates(rate, celsius, residuals));
        }
        return rates;
    }

    /** The days from now until so many more warm-days are lived, on the path of a draw. */
    double daysUntil(double warmDays, int draw) {
        double[] path = paths[draw % PATHS];
        if (warmDays >= path[HORIZON_DAYS]) {
            return HORIZON_DAYS * warmDays / path[HORIZON_DAYS];
        }
        int low = 0;
        int high = HORIZON_DAYS;
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (path[middle] <= warmDays) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low + (warmDays - path[low]) / (path[high] - path[low]);
    }

    /** The warm-days lived so many days from now, on the path of a draw. */
    double warmDaysAfter(double days, int draw) {
        double[] path = paths[draw % PATHS];
        if (days >= HORIZON_DAYS) {
            return path[HORIZON_DAYS] * days / HORIZON_DAYS;
        }
        int whole = (int) days;
        return path[whole] + (days - whole) * (path[whole + 1] - path[whole]);
    }

    private static double[] path(double[][] rates, double offset, Chance chance) {
        double[] path = new double[HORIZON_DAYS + 1];
        int source = 0;
        for (int day = 0; day < HORIZON_DAYS; day++) {
            int remembered = rates[day].length;
            source = day % BLOCK_DAYS == 0 ? chance.below(remembered) : (source + 1) % remembered;
            path[day + 1] = path[day] + Math.max(LEAST_RATE, rates[day][source] + offset);
        }
        return path;
    }

    private static double[] dailyRates(RateCurve rate, double nominal, List<double[]> residuals) {
        if (residuals.isEmpty()) {
            return new double[] {rate.at(nominal)};
        }
        return residuals.stream()
                .mapToDouble(day -> meanRate(rate, nominal, day))
                .toArray();
    }

    private static double meanRate(RateCurve rate, double nominal, double[] residuals) {
        double sum = 0;
        for (double residual : residuals) {
            sum += rate.at(nominal + residual);
        }
        return sum / residuals.length;
    }

    private static double standardDeviation(double[] values) {
        double mean = 0;
        for (double value : values) {
            mean += value / values.length;
        }
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return Math.sqrt(squares / Math.max(1, values.length - 1));
    }
}
