package org.moultwright.ui.instrument;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.moultwright.compute.calibration.CalibrationHistory;
import org.moultwright.compute.calibration.Redressing;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.CalibrationPoint;
import org.moultwright.domain.Quantity;
import org.moultwright.text.DayWords;

/** Calibrations in words. */
public final class CalibrationWords {
    private CalibrationWords() {}

    /** About where broods live; a correction is told for here. */
    static double usual(Quantity quantity) {
        return quantity == Quantity.TEMPERATURE ? 27 : 75;
    }

    static String unit(Quantity quantity) {
        return quantity == Quantity.TEMPERATURE ? "°C" : "%";
    }

    /** "Add 0.21 °C at 27.0 °C, ± 0.07 (one standard uncertainty)." */
    static String headline(Calibration draft) {
        Quantity quantity = draft.method().quantity();
        double at = usual(quantity);
        double add = draft.correction().at(at);
        return String.format(
                Locale.ROOT,
                "%s %.2f %s at %.1f %s, ± %.2f",
                add < 0 ? "Take off" : "Add",
                Math.abs(add),
                unit(quantity),
                at,
                unit(quantity),
                draft.correction().sdAt(at));
    }

    /** How the line goes, and what it rests on. */
    static String line(Calibration draft) {
        String slope = draft.points().size() == 1
                ? "One point tells nothing of the slope; farther from it the correction is less sure."
                : String.format(
                        Locale.ROOT,
                        "The correction grows by %+.4f for each %s.",
                        draft.correction().slope(),
                        draft.method().quantity() == Quantity.TEMPERATURE ? "degree" : "percent");
        return "The ± is one standard uncertainty; twice it holds about 95 %. " + slope;
    }

    /** "at 40.2 °C shown: add −0.18, the line says −0.19, residual +0.01". */
    static String residual(CalibrationPoint point, Calibration draft) {
        double fitted = draft.correction().at(point.indicated());
        return String.format(
                Locale.ROOT,
                "%.2f shown, %.2f true (%s): %+.3f off the line",
                point.indicated(),
                point.reference(),
                point.source(),
                point.correction() - fitted);
    }

    /** What the draft takes the place of. */
    static String superseded(Calibration draft, List<Calibration> known, DayWords days) {
        Optional<Calibration> before = CalibrationHistory.of(
                        known, draft.probe(), draft.method().quantity())
                .inForce(draft.doneAt());
        return before.map(earlier -> "It takes the place of the one of %s (%s) from %s on; that one is kept."
                        .formatted(date(earlier.doneAt(), days), found(earlier), date(draft.appliesFrom(), days)))
                .orElse("It is the first of this probe.");
    }

    /** How many past readings it speaks for. */
    static String redressed(Redressing change, Quantity quantity, DayWords days) {
        if (change.readings() == 0) {
            return "No reading kept so far changes.";
        }
        return String.format(
                Locale.ROOT,
                "%,d past readings, from %s on, read %.2f %s %s on average, by %.2f at most.",
                change.readings(),
                change.first().map(first -> date(first, days)).orElse(""),
                Math.abs(change.meanChange()),
                unit(quantity),
                change.meanChange() < 0 ? "lower" : "higher",
                Math.abs(change.largestChange()));
    }

    /** One line of what was found out before: "6 April 2026, ice point: +0.20 ± 0.08 °C, good until 6 April 2027". */
    static String history(Calibration one, Instant now, DayWords days) {
        return "%s, %s: %s from %s on, %s %s%s"
                .formatted(
                        date(one.doneAt(), days),
                        one.method().key(),
                        found(one),
                        date(one.appliesFrom(), days),
                        one.isExpiredAt(now) ? "expired" : "good until",
                        date(one.expiresAt(), days),
                        one.note().isEmpty() ? "" : ". " + one.note());
    }

    /** "calibrated 6 April 2026, good until 6 April 2027"; "calibration expired 6 April 2027: …"; or that there is none. */
    public static String standing(Optional<Calibration> inForce, Instant now, DayWords days) {
        return inForce.map(one -> one.isExpiredAt(now)
                        ? "Calibration expired %s. It still holds, less surely: calibrate again."
                                .formatted(date(one.expiresAt(), days))
                        : "Calibrated %s, good until %s."
                                .formatted(date(one.doneAt(), days), date(one.expiresAt(), days)))
                .orElse("Not calibrated on this desk.");
    }

    private static String found(Calibration one) {
        Quantity quantity = one.method().quantity();
        double at = usual(quantity);
        return String.format(
                Locale.ROOT,
                "%+.2f ± %.2f %s",
                one.correction().at(at),
                one.correction().sdAt(at),
                unit(quantity));
    }

    /** "6 April 2026": calibrations outlive years. */
    static String date(Instant at, DayWords days) {
        return days.day(at) + " " + days.date(at).getYear();
    }
}
