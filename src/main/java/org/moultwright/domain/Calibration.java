package org.moultwright.domain;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/**
 * What was found out about one probe's error, with the points it rests on.
 *
 * <p>It follows the probe, not the port it hangs on. It is never edited: one written down later takes its
 * place wherever that one applies.
 *
 * @param id names it for ever
 * @param probe the probe's code
 * @param doneAt when the points were taken
 * @param appliesFrom from which reading on it holds; may lie before {@code doneAt}
 * @param expiresAt when it should be done again; afterwards it is still the best there is, but less sure
 * @param points what it rests on
 * @param correction the line found through them
 * @param note further words, possibly empty
 */
public record Calibration(
        UUID id,
        String probe,
        CalibrationMethod method,
        Instant doneAt,
        Instant appliesFrom,
        Instant expiresAt,
        List<CalibrationPoint> points,
        Correction correction,
        String note) {
    public Calibration {
        Require.text("probe", probe);
        points = List.copyOf(points);
        Require.that(method.takes(points.size()), points.size() + " points do not fit the method " + method.key());
        Require.that(expiresAt.isAfter(doneAt), "expiresAt " + expiresAt + " must be after doneAt " + doneAt);
    }

    public boolean isExpiredAt(Instant instant) {
        return !instant.isBefore(expiresAt);
    }
}
