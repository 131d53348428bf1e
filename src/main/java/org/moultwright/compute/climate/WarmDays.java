package org.moultwright.compute.climate;

import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.moultwright.compute.rate.RateCurve;
import org.moultwright.domain.Require;

/**
 * The warm-days animals have lived by any instant: ∫ r(T) dt over their temperature, r being 1 at the
 * reference temperature.
 *
 * <p>Immutable; never falls with time; 0 up to the origin of their age, and level after the temperature
 * ends. A look-up costs a binary search and the integral over part of one straight piece.
 */
public final class WarmDays {
    private final LivedTemperature temperature;
    private final RateCurve rate;
    private final Ramp[] ramps;
    private final double[] warmDaysAtStart;
    private final double[] sensitivityPerKelvin;

    private WarmDays(LivedTemperature temperature, RateCurve rate) {
        this.temperature = temperature;
        this.rate = rate;
        List<LivedPiece> pieces = temperature.pieces();
        this.ramps = pieces.stream().map(LivedPiece::ramp).toArray(Ramp[]::new);
        this.warmDaysAtStart = new double[ramps.length + 1];
        this.sensitivityPerKelvin = new double[ramps.length];
        for (int i = 0; i < ramps.length; i++) {
            warmDaysAtStart[i + 1] = warmDaysAtStart[i] + ramps[i].development(rate);
            sensitivityPerKelvin[i] = Math.abs(slopeAt(ramps[i].meanCelsius())) * ramps[i].days();
        }
    }

    /**
     * The warm-days of a lived temperature.
     *
     * @param rate development per day, 1 at the reference temperature: see {@link RateCurve#relativeTo}
     */
    public static WarmDays of(LivedTemperature temperature, RateCurve rate) {
        return new WarmDays(temperature, rate);
    }

    /** The temperature these warm-days come from. */
    public LivedTemperature temperature() {
        return temperature;
    }

    /** Warm-days lived by an instant. */
    public double at(Instant instant) {
        long millis = instant.toEpochMilli();
        if (ramps.length == 0 || millis <= ramps[0].fromMillis()) {
            return 0;
        }
        if (millis >= ramps[ramps.length - 1].toMillis()) {
            return total();
        }
        return at(pieceContaining(millis), millis);
    }

    /** Warm-days lived between two instants, negative if the second is the earlier one. */
    public double between(Instant from, Instant to) {
        return at(to) - at(from);
    }

    /** Warm-days lived in all. */
    public double total() {
        return warmDaysAtStart[ramps.length];
    }

    /** The first instant by which so many warm-days were lived, empty if that is not yet. */
    public Optional<Instant> reached(double warmDays) {
        Require.within("warmDays", warmDays, 0, Double.MAX_VALUE);
        if (warmDays == 0) {
            return Optional.of(temperature.from());
        }
        if (warmDays > total()) {
            return Optional.empty();
        }
        int found = Arrays.binarySearch(warmDaysAtStart, warmDays);
        int piece = found >= 0 ? firstEqual(found) - 1 : -found - 2;
        return Optional.of(Instant.ofEpochMilli(firstMillisReaching(piece, warmDays)));
    }

    /**
     * Standard uncertainty of the warm-days lived between two instants that comes from their temperature:
     * each source's error is common to all its spans, sources are independent.
     */
    public double sd(Instant from, Instant to) {
        return sd(from, to, source -> true);
    }

    /** The part of {@link #sd} that comes from what no probe measured. */
    public double unmeasuredSd(Instant from, Instant to) {
        return sd(from, to, source -> !source.isMeasured());
    }

    private double sd(Instant from, Instant to, Predicate<TemperatureSource> counted) {
        Map<TemperatureSource, Double> shifts = new HashMap<>();
        List<LivedPiece> pieces = temperature.pieces();
        for (int i = 0; i < ramps.length; i++) {
            LivedPiece piece = pieces.get(i);
            double share = shareWithin(ramps[i], from.toEpochMilli(), to.toEpochMilli());
            if (share > 0 && counted.test(piece.source())) {
                shifts.merge(piece.source(), share * piece.sdCelsius() * sensitivityPerKelvin[i], Double::sum);
            }
        }
        return Math.sqrt(
                shifts.values().stream().mapToDouble(shift -> shift * shift).sum());
    }

    private static double shareWithin(Ramp ramp, long from, long to) {
        double covered = Math.min(ramp.toMillis(), to) - Math.max(ramp.fromMillis(), from);
        return Math.max(0, covered) / (ramp.toMillis() - ramp.fromMillis());
    }

    private double slopeAt(double celsius) {
        return rate.at(celsius + 0.5) - rate.at(celsius - 0.5);
    }

    private int pieceContaining(long millis) {
        int low = 0;
        int high = ramps.length - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (ramps[middle].toMillis() > millis) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private double at(int piece, long millis) {
        Ramp ramp = ramps[piece];
        if (millis >= ramp.toMillis()) {
            return warmDaysAtStart[piece + 1];
        }
        double within = ramp.between(ramp.fromMillis(), millis).development(rate);
        return Math.min(warmDaysAtStart[piece] + within, warmDaysAtStart[piece + 1]);
    }

    private int firstEqual(int found) {
        int first = found;
        while (first > 0 && warmDaysAtStart[first - 1] == warmDaysAtStart[found]) {
            first--;
        }
        return first;
    }

    private long firstMillisReaching(int piece, double warmDays) {
        long below = ramps[piece].fromMillis();
        long reached = ramps[piece].toMillis();
        while (reached - below > 1) {
            long middle = (below + reached) >>> 1;
            if (at(piece, middle) >= warmDays) {
                reached = middle;
            } else {
                below = middle;
            }
        }
        return reached;
    }
}
