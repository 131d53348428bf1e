package org.moultwright.compute.climate;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.moultwright.compute.mould.MouldExposure;
import org.moultwright.compute.mould.MouldIndex;
import org.moultwright.compute.psychro.MoistAir;
import org.moultwright.compute.rate.BelievedRate;
import org.moultwright.domain.AssumedTimings;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Correction;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;

/**
 * What the climate of one container was, from the origin of its brood's age up to an instant.
 *
 * <p>The ranges are those of the good readings that told of it, corrected, each counted once; without any, those
 * between the lowest and highest values that did, their mean being that of the middles. The warm-days are of all the time, what was not measured filled as {@link LivedTemperature} says.
 *
 * @param container its code
 * @param lived its temperature
 * @param warmDays the warm-days lived in it, by the keeper's belief of the brood's timing
 * @param readings how many readings told of it
 * @param temperatureCelsius empty without readings
 * @param humidityPercent empty where none had a humidity
 * @param dewPointCelsius of the same readings
 * @param mould how much its air has favoured mould
 */
public record ClimateSummary(
        String container,
        LivedTemperature lived,
        double warmDays,
        int readings,
        Optional<Range> temperatureCelsius,
        Optional<Range> humidityPercent,
        Optional<Range> dewPointCelsius,
        MouldIndex mould) {

    private static final Correction NONE = Correction.constant(0, 0);

    /**
     * The summary of any container, from what was written of a brood up to an instant.
     *
     * @param assumed of the brood's timing where its keeper believes nothing
     */
    public static ClimateSummary of(BroodRecord record, String container, Instant until, AssumedTimings assumed) {
        LivedTemperature lived = LivedTemperature.of(record, container, until);
        ReadingSeries air = air(record, lived);
        List<Extremes> remembered = remembered(record, lived);
        int[] all = IntStream.range(0, air.size()).toArray();
        int[] humid = Arrays.stream(all).filter(i -> air.humidityPercent(i) > 0).toArray();
        return new ClimateSummary(
                container,
                lived,
                WarmDays.of(lived, BelievedRate.of(record.brood(), assumed)).total(),
                air.size(),
                Range.of(Arrays.stream(all).mapToDouble(air::temperatureCelsius))
                        .or(() -> between(remembered, Extremes::lowestCelsius, Extremes::highestCelsius)),
                Range.of(Arrays.stream(humid).mapToDouble(air::humidityPercent))
                        .or(() -> between(remembered, Extremes::lowestPercent, Extremes::highestPercent)),
                Range.of(Arrays.stream(humid).mapToDouble(i -> dewPointCelsius(air, i))),
                MouldExposure.over(air, lived.from(), lived.until(), NONE, NONE, 0)
                        .likely());
    }

    /** The good readings of each span's own probe, corrected, in order of time. */
    static ReadingSeries air(BroodRecord record, LivedTemperature lived) {
        ReadingSeries.Builder air = new ReadingSeries.Builder();
        for (LivedSpan span : lived.spans()) {
            if (span.source() instanceof TemperatureSource.Probe probe) {
                ReadingSeries told = record.readings()
                        .getOrDefault(probe.probe(), ReadingSeries.EMPTY)
                        .between(span.from(), span.to());
                for (int i = 0; i < told.size(); i++) {
                    if (told.quality(i) == Quality.GOOD) {
                        air.add(
                                told.epochMillis(i),
                                celsius(record, probe, told, i),
                                told.humidityPercent(i),
                                Quality.GOOD);
                    }
                }
            }
        }
        return air.build();
    }

    /** The lowest and highest values that told of some of its time. */
    private static List<Extremes> remembered(BroodRecord record, LivedTemperature lived) {
        return record.extremes().stream()
                .filter(extremes -> lived.spans().stream()
                        .anyMatch(span -> span.source() instanceof TemperatureSource.BetweenExtremes between
                                && between.container().equals(extremes.container())
                                && span.from().isBefore(extremes.to())
                                && span.to().isAfter(extremes.from())))
                .toList();
    }

    private static Optional<Range> between(
            List<Extremes> remembered, ToDoubleFunction<Extremes> lowest, ToDoubleFunction<Extremes> highest) {
        List<Extremes> known = remembered.stream()
                .filter(extremes -> !Double.isNaN(lowest.applyAsDouble(extremes)))
                .toList();
        return Range.of(known.stream()
                .flatMapToDouble(
                        extremes -> DoubleStream.of(lowest.applyAsDouble(extremes), highest.applyAsDouble(extremes))));
    }

    private static double celsius(BroodRecord record, TemperatureSource.Probe probe, ReadingSeries told, int i) {
        Instant takenAt = Instant.ofEpochMilli(told.epochMillis(i));
        double indicated = told.temperatureCelsius(i);
        return record.probeStays().stream()
                .filter(stay -> stay.probe().equals(probe.probe())
                        && stay.container().equals(probe.container())
                        && stay.span().contains(takenAt))
                .findFirst()
                .map(stay -> stay.airCelsius(indicated))
                .orElse(indicated);
    }

    private static double dewPointCelsius(ReadingSeries air, int i) {
        double celsius = Math.min(Math.max(air.temperatureCelsius(i), Reading.LOWEST_CELSIUS), Reading.HIGHEST_CELSIUS);
        return MoistAir.of(celsius, air.humidityPercent(i)).dewPointCelsius();
    }

    /** How far a figure went. */
    public record Range(double lowest, double mean, double highest) {
        static Optional<Range> of(DoubleStream figures) {
            var all = figures.summaryStatistics();
            return all.getCount() == 0
                    ? Optional.empty()
                    : Optional.of(new Range(all.getMin(), all.getAverage(), all.getMax()));
        }
    }
}
