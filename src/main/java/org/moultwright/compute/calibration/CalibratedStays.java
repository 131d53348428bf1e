package org.moultwright.compute.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.Correction;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quantity;
import org.moultwright.domain.Span;

/**
 * Lets what was found out about probes take the place of what was only written beside their stays.
 *
 * <p>Readings stay raw; each stay of a calibrated probe is cut where its calibration changes, and each part
 * carries the correction in force. What was written beside the stay holds on where no calibration applies;
 * after one has expired, its uncertainty joins that of the calibration.
 */
public final class CalibratedStays {
    private final List<Calibration> calibrations;

    /**
     * @param calibrations those that stand, in the order they were written down
     */
    public CalibratedStays(List<Calibration> calibrations) {
        this.calibrations = List.copyOf(calibrations);
    }

    /** A brood's record whose probes read as calibrated. */
    public BroodRecord dress(BroodRecord record) {
        return record.withProbeStays(dress(record.probeStays()));
    }

    public List<ProbeStay> dress(List<ProbeStay> stays) {
        List<ProbeStay> dressed = new ArrayList<>();
        for (ProbeStay stay : stays) {
            CalibrationHistory history = CalibrationHistory.of(calibrations, stay.probe(), Quantity.TEMPERATURE);
            history.cut(stay.span()).forEach(part -> dressed.add(dress(stay, part, history)));
        }
        return joined(dressed);
    }

    private static ProbeStay dress(ProbeStay written, Span part, CalibrationHistory history) {
        return history.inForce(part.from())
                .map(calibration -> new ProbeStay(
                        written.probe(),
                        written.container(),
                        part,
                        correction(calibration, written, part),
                        Optional.of(calibration.doneAt())))
                .orElseGet(() -> written.with(part));
    }

    private static Correction correction(Calibration calibration, ProbeStay written, Span part) {
        Correction found = calibration.correction();
        return calibration.isExpiredAt(part.from()) ? found.lessSureBy(written.sdCelsius()) : found;
    }

    /** Neighbours that read the same are one stay again, so that no reading lies between two. */
    private static List<ProbeStay> joined(List<ProbeStay> parts) {
        List<ProbeStay> stays = new ArrayList<>();
        for (ProbeStay part : parts) {
            int last = stays.size() - 1;
            if (last >= 0 && goesOn(stays.get(last), part)) {
                Span whole = new Span(stays.get(last).span().from(), part.span().to());
                stays.set(last, part.with(whole));
            } else {
                stays.add(part);
            }
        }
        return stays;
    }

    private static boolean goesOn(ProbeStay before, ProbeStay after) {
        return before.span().to().filter(after.span().from()::equals).isPresent()
                && before.with(after.span()).equals(after);
    }
}
