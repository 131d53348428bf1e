package org.moultwright.compute.calibration;

import java.time.Instant;
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
     * @param before the calibrations that stood, in the order they were written down
     * @param otherwise what a reading needed that none of them applied to
     */
    public static Tally against(List<Calibration> before, Correction otherwise, Calibration added) {
        return new Tally(before, otherwise, added);
    }

    /** Goes through a probe's readings, however many, in order of time and in as many pieces as they come. Not safe to share. */
    public static final class Tally {
        private final Calibration added;
        private final Correction otherwise;
        private final Quantity quantity;
        private final CalibrationHistory history;
        private Optional<Instant> first = Optional.empty();
        private int readings;
        private double sum;
        private double farthest;

        private Tally(List<Calibration> before, Correction otherwise, Calibration added) {
            this.added = added;
            this.otherwise = otherwise;
            this.quantity = added.method().quantity();
            this.history = CalibrationHistory.of(before, added.probe(), quantity);
        }

        /** Adds raw readings; those the calibration does not speak for are left out. */
        public Tally add(ReadingSeries raw) {
            for (int i = raw.indexAtOrAfter(added.appliesFrom()); i < raw.size(); i++) {
                double indicated =
                        quantity == Quantity.TEMPERATURE ? raw.temperatureCelsius(i) : raw.humidityPercent(i);
                if (raw.quality(i) == Quality.GOOD && !Double.isNaN(indicated)) {
                    add(Instant.ofEpochMilli(raw.epochMillis(i)), indicated);
                }
            }
            return this;
        }

        private void add(Instant takenAt, double indicated) {
            Correction was =
                    history.inForce(takenAt).map(Calibration::correction).orElse(otherwise);
            double change = added.correction().at(indicated) - was.at(indicated);
            first = first.or(() -> Optional.of(takenAt));
            readings++;
            sum += change;
            farthest = Math.abs(change) > Math.abs(farthest) ? change : farthest;
        }

        public Redressing result() {
            return new Redressing(readings, first, readings == 0 ? 0 : sum / readings, farthest);
        }
    }
}
