package org.moultwright.compute.calibration;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.Correction;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Quantity;
import org.moultwright.domain.ReadingSeries;

/**
 * What a calibration newly written down changes of readings long kept: what the audit says of it.
 *
 * @param readings how many good readings it now speaks for
 * @param first when the first of them was taken, empty if there is none
 * @param meanChange how much higher they now read on average, in °C or %; 0 if there is none
 * @param largestChange the change that is farthest from 0; 0 if there is none
 */
public record Redressing(int readings, Optional<Instant> first, double meanChange, double largestChange) {

    /**
     * Compares what readings meant before a calibration with what they mean with it.
     *
     * @param raw the probe's readings
     * @param before the calibrations that stood, in the order they were written down
     * @param otherwise what a reading needed that none of them applied to
     */
    public static Redressing of(ReadingSeries raw, List<Calibration> before, Correction otherwise, Calibration added) {
        Quantity quantity = added.method().quantity();
        CalibrationHistory history = CalibrationHistory.of(before, added.probe(), quantity);
        List<Double> changes = new ArrayList<>();
        Optional<Instant> first = Optional.empty();
        for (int i = raw.indexAtOrAfter(added.appliesFrom()); i < raw.size(); i++) {
            double indicated = quantity == Quantity.TEMPERATURE ? raw.temperatureCelsius(i) : raw.humidityPercent(i);
            if (raw.quality(i) == Quality.GOOD && !Double.isNaN(indicated)) {
                Instant takenAt = Instant.ofEpochMilli(raw.epochMillis(i));
                first = first.or(() -> Optional.of(takenAt));
                Correction was =
                        history.inForce(takenAt).map(Calibration::correction).orElse(otherwise);
                changes.add(added.correction().at(indicated) - was.at(indicated));
            }
        }
        return new Redressing(changes.size(), first, mean(changes), farthest(changes));
    }

    private static double mean(List<Double> changes) {
        return changes.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }

    private static double farthest(List<Double> changes) {
        return changes.stream().reduce(0.0, (one, other) -> Math.abs(other) > Math.abs(one) ? other : one);
    }
}
