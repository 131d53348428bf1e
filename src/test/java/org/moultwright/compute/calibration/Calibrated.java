package org.moultwright.compute.calibration;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.CalibrationMethod;
import org.moultwright.domain.CalibrationPoint;

/** Calibrations as tests need them. */
final class Calibrated {
    static final Instant MARCH = Instant.parse("2026-03-01T00:00:00Z");

    private Calibrated() {}

    /** An ice point of a probe that reads too high, from a day of March on, good for a month. */
    static Calibration ice(String probe, double tooHigh, int fromDay) {
        List<CalibrationPoint> points = List.of(KnownPoints.ice(tooHigh, 0.02));
        Instant from = day(fromDay);
        return new Calibration(
                UUID.nameUUIDFromBytes(new byte[] {(byte) fromDay, (byte) (100 * tooHigh)}),
                probe,
                CalibrationMethod.ICE_POINT,
                from,
                from,
                from.plus(Duration.ofDays(30)),
                points,
                CorrectionFit.through(CalibrationMethod.ICE_POINT, points),
                "");
    }

    static Instant day(int day) {
        return MARCH.plus(Duration.ofDays(day));
    }
}
