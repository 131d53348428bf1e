package org.moultwright.compute.climate;

import java.time.Instant;
import java.util.HashMap;
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
    private final RunningTotal lived;
    private final RunningTotal livedPerKelvin;

    private WarmDays(LivedTemperature temperature, RateCurve rate) {
        this.temperature = temperature;
        this.lived = new RunningTotal(temperature.ramps(), ramp -> ramp.development(rate));
        this.livedPerKelvin = new RunningTotal(temperature.ramps(), ramp -> ramp.developmentPerKelvin(rate));
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
        return lived.at(instant.toEpochMilli());
    }

    /** Warm-days lived between two instants, negative if the second is the earlier one. */
    public double between(Instant from, Instant to) {
        return at(to) - at(from);
    }

    /** Warm-days lived in all. */
    public double total() {
        return lived.total();
    }

    /** The first instant by which so many warm-days were lived, empty if that is not yet. */
    public Optional<Instant> reached(double warmDays) {
        Require.within("warmDays", warmDays, 0, Double.MAX_VALUE);
        if (warmDays == 0) {
            return Optional.of(temperature.from());
        }
        return warmDays > total()
                ? Optional.empty()
                : Optional.of(Instant.ofEpochMilli(lived.firstMillisReaching(warmDays)));
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
        for (LivedSpan span : temperature.spans()) {
            Instant start = span.from().isAfter(from) ? span.from() : from;
            Instant end = span.to().isBefore(to) ? span.to() : to;
            if (start.isBefore(end) && counted.test(span.source())) {
                double warmDaysPerKelvin =
                        livedPerKelvin.at(end.toEpochMilli()) - livedPerKelvin.at(start.toEpochMilli());
                shifts.merge(span.source(), span.sdCelsius() * warmDaysPerKelvin, Double::sum);
            }
        }
        return Math.sqrt(
                shifts.values().stream().mapToDouble(shift -> shift * shift).sum());
    }
}
