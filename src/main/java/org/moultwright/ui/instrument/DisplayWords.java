package org.moultwright.ui.instrument;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.moultwright.compute.agreement.DisplayCheck;
import org.moultwright.compute.agreement.LimitsOfAgreement;

/** A display held against a probe, in words. */
final class DisplayWords {
    /** With fewer, limits would say more than is known; common practice, no source. */
    static final int ENOUGH_PAIRS = 10;

    private DisplayWords() {}

    static String headline(DisplayCheck.Judgement judged) {
        return switch (judged.verdict()) {
            case AGREES -> "Agrees";
            case DISAGREES ->
                String.format(
                        Locale.ROOT,
                        "Disagrees: reads %.1f °C %s",
                        Math.abs(judged.difference()),
                        judged.difference() > 0 ? "high" : "low");
            case CANNOT_TELL -> "Cannot tell";
        };
    }

    /** The numbers of a comparison, and what to do. */
    static String arithmetic(DisplayCheck check, DisplayCheck.Judgement judged) {
        return String.format(
                Locale.ROOT,
                "%.1f shown, %.1f measured: %+.2f °C apart. Probe ± %.2f, last digit ± %.2f, place ± %.2f make ± %.2f together"
                        + " (%.0f standard uncertainties). Within %.1f °C it would agree for sure up to %.2f and disagree"
                        + " for sure beyond %.2f.",
                check.displayCelsius(),
                check.probeCelsius(),
                judged.difference(),
                judged.uncertainty().probe(),
                judged.uncertainty().resolution(),
                judged.uncertainty().position(),
                judged.reach(),
                judged.coverageFactor(),
                judged.tolerance(),
                Math.max(0, judged.agreesWithin()),
                judged.disagreesBeyond());
    }

    /** What to do about the verdict. */
    static String remedy(DisplayCheck.Judgement judged, double wantedCelsius) {
        return switch (judged.verdict()) {
            case AGREES -> "Nothing to do.";
            case DISAGREES ->
                String.format(
                        Locale.ROOT,
                        "Trust the probe; set %.1f to get %.1f.",
                        wantedCelsius + judged.difference(),
                        wantedCelsius);
            case CANNOT_TELL ->
                judged.agreesWithin() < 0
                        ? "The uncertainty is larger than what you accept: calibrate the probe, or lay it where the display's sensor is."
                        : "The difference lies near what you accept: read it off again another day.";
        };
    }

    /** What many comparisons say together, or how many are still lacking. */
    static String together(List<DisplayPair> pairs, Optional<LimitsOfAgreement> limits) {
        return limits.map(found -> String.format(
                        Locale.ROOT,
                        "Over %d pairs the display reads %+.2f °C on average; on most occasions (95 %%) between %+.2f and %+.2f."
                                + " The soft grounds show how sure the limits are.",
                        found.pairs(),
                        found.bias(),
                        found.lower(),
                        found.upper()))
                .orElseGet(() ->
                        "%d of %d pairs: too few to say how far they differ on most occasions. Read the display off on other days, at other temperatures."
                                .formatted(pairs.size(), ENOUGH_PAIRS));
    }
}
