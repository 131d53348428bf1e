package org.moultwright.ui.instrument;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.moultwright.compute.calibration.CalibrationHistory;
import org.moultwright.compute.calibration.Redressing;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.CalibrationPoint;
import org.moultwright.domain.Quantity;
import org.moultwright.language.Degrees;
import org.moultwright.language.Numbers;
import org.moultwright.language.Scale;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;

/** Calibrations in words. */
public final class CalibrationWords {
    private CalibrationWords() {}

    /** About where broods live; a correction is told for here. */
    static double usual(Quantity quantity) {
        return quantity == Quantity.TEMPERATURE ? 27 : 75;
    }

    static String unit(Quantity quantity) {
        return quantity == Quantity.TEMPERATURE ? Degrees.symbol() : "%";
    }

    private static double shown(Quantity quantity, double value) {
        return quantity == Quantity.TEMPERATURE ? Scale.TEMPERATURE.shown(value) : value;
    }

    private static double apart(Quantity quantity, double difference) {
        return quantity == Quantity.TEMPERATURE ? Scale.APART.shown(difference) : difference;
    }

    /** "Add 0.21 °C at 27.0 °C, ± 0.07 (one standard uncertainty)." */
    static String headline(Calibration draft) {
        Quantity quantity = draft.method().quantity();
        double at = usual(quantity);
        double add = draft.correction().at(at);
        return Texts.say(
                "{0} {1} {2} at {3} {2}, ± {4}",
                add < 0 ? Texts.say("Take off") : Texts.say("Add"),
                Numbers.fixed(Math.abs(apart(quantity, add)), 2),
                unit(quantity),
                Numbers.fixed(shown(quantity, at), 1),
                Numbers.fixed(apart(quantity, draft.correction().sdAt(at)), 2));
    }

    /** How the line goes, and what it rests on. */
    static String line(Calibration draft) {
        String slope = Texts.count(
                draft.points().size(),
                "One point tells nothing of the slope; farther from it the correction is less sure.",
                "The correction grows by {0} for each {1}.",
                Numbers.signed(draft.correction().slope(), 4),
                draft.method().quantity() == Quantity.TEMPERATURE ? Texts.say("degree") : Texts.say("percent"));
        return Texts.say("The ± is one standard uncertainty; twice it holds about 95 %. {0}", slope);
    }

    /** "at 40.2 °C shown: add −0.18, the line says −0.19, residual +0.01". */
    static String residual(CalibrationPoint point, Calibration draft) {
        Quantity quantity = draft.method().quantity();
        double fitted = draft.correction().at(point.indicated());
        return Texts.say(
                "{0} shown, {1} true ({2}): {3} off the line",
                Numbers.fixed(shown(quantity, point.indicated()), 2),
                Numbers.fixed(shown(quantity, point.reference()), 2),
                point.source(),
                Numbers.signed(apart(quantity, point.correction() - fitted), 3));
    }

    /** What the draft takes the place of. */
    static String superseded(Calibration draft, List<Calibration> known, DayWords days) {
        Optional<Calibration> before = CalibrationHistory.of(
                        known, draft.probe(), draft.method().quantity())
                .inForce(draft.doneAt());
        return before.map(earlier -> Texts.say(
                        "It takes the place of the one of {0} ({1}) from {2} on; that one is kept.",
                        date(earlier.doneAt(), days), found(earlier), date(draft.appliesFrom(), days)))
                .orElse(Texts.say("It is the first of this probe."));
    }

    /** How many past readings it speaks for. */
    static String redressed(Redressing change, Quantity quantity, DayWords days) {
        if (change.readings() == 0) {
            return Texts.say("No reading kept so far changes.");
        }
        return Texts.say(
                "{0} past readings, from {1} on, read {2} {3} {4} on average, by {5} at most.",
                Numbers.grouped(change.readings()),
                change.first().map(first -> date(first, days)).orElse(""),
                Numbers.fixed(Math.abs(apart(quantity, change.meanChange())), 2),
                unit(quantity),
                change.meanChange() < 0 ? Texts.say("lower") : Texts.say("higher"),
                Numbers.fixed(Math.abs(apart(quantity, change.largestChange())), 2));
    }

    /** One line of what was found out before: "6 April 2026, ice point: +0.20 ± 0.08 °C, good until 6 April 2027". */
    static String history(Calibration one, Instant now, DayWords days) {
        Object[] places = {
            date(one.doneAt(), days),
            one.method().key(),
            found(one),
            date(one.appliesFrom(), days),
            date(one.expiresAt(), days)
        };
        String known = one.isExpiredAt(now)
                ? Texts.say("{0}, {1}: {2} from {3} on, expired {4}", places)
                : Texts.say("{0}, {1}: {2} from {3} on, good until {4}", places);
        return one.note().isEmpty() ? known : known + ". " + one.note();
    }

    /** "calibrated 6 April 2026, good until 6 April 2027"; "calibration expired 6 April 2027: …"; or that there is none. */
    public static String standing(Optional<Calibration> inForce, Instant now, DayWords days) {
        return inForce.map(one -> one.isExpiredAt(now)
                        ? Texts.say(
                                "Calibration expired {0}. It still holds, less surely: calibrate again.",
                                date(one.expiresAt(), days))
                        : Texts.say(
                                "Calibrated {0}, good until {1}.",
                                date(one.doneAt(), days), date(one.expiresAt(), days)))
                .orElse(Texts.say("Not calibrated on this desk."));
    }

    private static String found(Calibration one) {
        Quantity quantity = one.method().quantity();
        double at = usual(quantity);
        return Numbers.signed(apart(quantity, one.correction().at(at)), 2) + " ± "
                + Numbers.fixed(apart(quantity, one.correction().sdAt(at)), 2) + " " + unit(quantity);
    }

    /** "6 April 2026": calibrations outlive years. */
    static String date(Instant at, DayWords days) {
        return days.day(at) + " " + days.date(at).getYear();
    }
}
