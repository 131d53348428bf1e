package org.moultwright.compute.calibration;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.Quantity;
import org.moultwright.domain.Span;

/**
 * All that was ever found out about one probe's error in one quantity.
 *
 * <p>Of those that apply to a reading, the one written down last is in force: a new one that applies from
 * earlier on takes the past over, and the old ones are kept. Immutable.
 */
public final class CalibrationHistory {
    private final List<Calibration> inOrderWritten;

    private CalibrationHistory(List<Calibration> inOrderWritten) {
        this.inOrderWritten = List.copyOf(inOrderWritten);
    }

    /** The history of a probe out of all calibrations, these in the order they were written down. */
    public static CalibrationHistory of(List<Calibration> inOrderWritten, String probe, Quantity quantity) {
        return new CalibrationHistory(inOrderWritten.stream()
                .filter(one -> one.probe().equals(probe) && one.method().quantity() == quantity)
                .toList());
    }

    /** The calibration for a reading taken at an instant. */
    public Optional<Calibration> inForce(Instant at) {
        return inOrderWritten.stream()
                .filter(one -> !one.appliesFrom().isAfter(at))
                .reduce((earlier, later) -> later);
    }

    /** A span cut where another calibration comes into force or the one in force expires. */
    public List<Span> cut(Span whole) {
        TreeSet<Instant> turns = new TreeSet<>();
        inOrderWritten.forEach(one -> {
            turns.add(one.appliesFrom());
            turns.add(one.expiresAt());
        });
        turns.removeIf(turn -> !turn.isAfter(whole.from()) || !whole.contains(turn));
        List<Span> parts = new ArrayList<>();
        Instant from = whole.from();
        for (Instant turn : turns) {
            parts.add(new Span(from, Optional.of(turn)));
            from = turn;
        }
        parts.add(new Span(from, whole.to()));
        return parts;
    }

    public boolean isEmpty() {
        return inOrderWritten.isEmpty();
    }
}
