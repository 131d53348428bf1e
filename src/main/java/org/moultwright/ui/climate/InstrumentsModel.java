package org.moultwright.ui.climate;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.moultwright.compute.calibration.CalibrationHistory;
import org.moultwright.compute.psychro.MeasuredAir;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.Correction;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quantity;
import org.moultwright.task.NewestQuestion;
import org.moultwright.task.Outcome;

/** What is known of the probes themselves: their calibrations, and how the chosen one did; read aside. */
final class InstrumentsModel {
    private final ClimateDesk desk;
    private final Supplier<ProbePlaces> places;
    private final ReadOnlyObjectWrapper<List<Calibration>> calibrations = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<ProbeFacts> facts = new ReadOnlyObjectWrapper<>(ProbeFacts.NOTHING);
    private final NewestQuestion<String, Found> source;

    /** @param places where the probes stand, as last read */
    InstrumentsModel(ClimateDesk desk, Supplier<ProbePlaces> places) {
        this.desk = desk;
        this.places = places;
        this.source = new NewestQuestion<>(desk.runner(), this::find, this::found);
    }

    /** Every calibration that stands, in the order they were written down. */
    ReadOnlyObjectProperty<List<Calibration>> calibrationsProperty() {
        return calibrations.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<ProbeFacts> factsProperty() {
        return facts.getReadOnlyProperty();
    }

    Optional<Calibration> inForce(String probe, Quantity quantity, Instant at) {
        return CalibrationHistory.of(calibrations.get(), probe, quantity).inForce(at);
    }

    /** Reads anew what is known of a probe. */
    void fetch(String probe) {
        source.ask(probe);
    }

    private Found find(String probe) {
        List<Calibration> known = desk.instruments().book().calibrations();
        if (probe.isEmpty()) {
            return new Found(known, ProbeFacts.NOTHING);
        }
        Instant now = desk.clock().instant();
        Correction temperature =
                places.get().stay(probe, now).map(ProbeStay::correction).orElse(Correction.constant(0, 0));
        Correction humidity = CalibrationHistory.of(known, probe, Quantity.HUMIDITY)
                .inForce(now)
                .map(Calibration::correction)
                .orElse(Correction.constant(0, MeasuredAir.UNTRIED_HUMIDITY_SD_PERCENT));
        return new Found(
                known,
                ProbeFacts.of(
                        desk.log().series(probe, ProbeFacts.since(now), now.plusMillis(1)),
                        temperature,
                        humidity,
                        now));
    }

    private void found(Outcome<Found> outcome) {
        // Readings that cannot be read are said by the trace.
        if (outcome instanceof Outcome.Done<Found> done) {
            calibrations.set(done.value().calibrations());
            facts.set(done.value().facts());
        }
    }

    private record Found(List<Calibration> calibrations, ProbeFacts facts) {}
}
