package org.moultwright.ui.instrument;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.Correction;
import org.moultwright.domain.Reading;

/**
 * The probe to be calibrated.
 *
 * @param probe its code
 * @param known every calibration that stands, in the order they were written down
 * @param otherwise what its indications of temperature need where none applies
 * @param last its last reading, raw, if it was heard
 */
public record CalibrationSubject(
        String probe, List<Calibration> known, Correction otherwise, Supplier<Optional<Reading>> last) {
    public CalibrationSubject {
        known = List.copyOf(known);
    }
}
