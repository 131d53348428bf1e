package org.moultwright.compute.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.moultwright.compute.mould.MouldClimate;
import org.moultwright.compute.mould.MouldIndex;
import org.moultwright.compute.psychro.MoistAir;
import org.moultwright.compute.rate.BelievedRate;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;

/**
 * What the climate of one container was, from the origin of its brood's age up to an instant.
 *
 * <p>The ranges are those of the good readings that told of it, offsets taken off, each counted once; the
 * warm-days are of all the time, what was not measured filled as {@link LivedTemperature} says.
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

    /** Between two readings further apart than this nothing is known of the air. */
    private static final Duration LONGEST_BRIDGE = Duration.ofMillis(MeasuredTrack.LONGEST_BRIDGE_MILLIS);

    private static final double MILLIS_A_DAY = Duration.ofDays(1).toMillis();

    /** The summary of any container, from what was written of a brood up to an instant. */
    public static ClimateSummary of(BroodRecord record, String container, Instant until) {
        LivedTemperature lived = LivedTemperature.of(record, container, until);
        List<Reading> told = told(record, lived);
        List<Reading> humid = told.stream().filter(ClimateSummary::hasHumidity).toList();
        return new ClimateSummary(
                container,
                lived,
                WarmDays.of(lived, BelievedRate.of(record.brood())).total(),
                told.size(),
                Range.of(told.stream().mapToDouble(Reading::temperatureCelsius)),
                Range.of(humid.stream().mapToDouble(Reading::humidityPercent)),
                Range.of(humid.stream().mapToDouble(ClimateSummary::dewPointCelsius)),
                mould(humid));
    }

    /** The good readings of each span's own probe, in order of time, less its offset. */
    private static List<Reading> told(BroodRecord record, LivedTemperature lived) {
        List<Reading> told = new ArrayList<>();
        for (LivedSpan span : lived.spans()) {
            if (span.source() instanceof TemperatureSource.Probe probe) {
                ReadingSeries series = record.readings().getOrDefault(probe.probe(), ReadingSeries.EMPTY);
                series.between(span.from(), span.to()).forEach(reading -> {
                    if (reading.quality() == Quality.GOOD) {
                        told.add(corrected(record, probe, reading));
                    }
                });
            }
        }
        return told;
    }

    private static Reading corrected(BroodRecord record, TemperatureSource.Probe probe, Reading reading) {
        double offsetCelsius = record.probeStays().stream()
                .filter(stay -> stay.probe().equals(probe.probe())
                        && stay.container().equals(probe.container())
                        && stay.span().contains(reading.takenAt()))
                .findFirst()
                .map(stay -> stay.offsetCelsius())
                .orElse(0.0);
        return new Reading(
                reading.takenAt(),
                reading.temperatureCelsius() - offsetCelsius,
                reading.humidityPercent(),
                Quality.SUSPECT);
    }

    private static boolean hasHumidity(Reading reading) {
        return reading.humidityPercent() > 0
                && reading.temperatureCelsius() >= Reading.LOWEST_CELSIUS
                && reading.temperatureCelsius() <= Reading.HIGHEST_CELSIUS;
    }

    private static double dewPointCelsius(Reading reading) {
        return MoistAir.of(reading.temperatureCelsius(), reading.humidityPercent())
                .dewPointCelsius();
    }

    /** Each reading stands for the time up to the next, if that is near; no air outside the model's range counts. */
    private static MouldIndex mould(List<Reading> humid) {
        MouldIndex index = MouldIndex.NONE;
        for (int i = 0; i + 1 < humid.size(); i++) {
            Reading reading = humid.get(i);
            Duration time = Duration.between(reading.takenAt(), humid.get(i + 1).takenAt());
            boolean within = reading.temperatureCelsius() > 0 && reading.temperatureCelsius() <= 50;
            if (within && time.compareTo(LONGEST_BRIDGE) <= 0) {
                index = index.after(
                        new MouldClimate(reading.temperatureCelsius(), reading.humidityPercent()),
                        time.toMillis() / MILLIS_A_DAY);
            }
        }
        return index;
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
