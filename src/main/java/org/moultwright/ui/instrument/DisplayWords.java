package org.moultwright.ui.instrument;

import java.util.List;
import java.util.Optional;
import org.moultwright.compute.agreement.DisplayCheck;
import org.moultwright.compute.agreement.LimitsOfAgreement;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;

/** A display held against a probe, in words. */
final class DisplayWords {
    /** With fewer, limits would say more than is known; common practice, no source. */
    static final int ENOUGH_PAIRS = 10;

    private DisplayWords() {}

    static String headline(DisplayCheck.Judgement judged) {
        return switch (judged.verdict()) {
            case AGREES -> Texts.say("Agrees");
            case DISAGREES ->
                Texts.say(
                        "Disagrees: reads {0} °C {1}",
                        Numbers.fixed(Math.abs(judged.difference()), 1),
                        judged.difference() > 0 ? Texts.say("high") : Texts.say("low"));
            case CANNOT_TELL -> Texts.say("Cannot tell");
        };
    }

    /** The numbers of a comparison, and what to do. */
    static String arithmetic(DisplayCheck check, DisplayCheck.Judgement judged) {
        return Texts.say(
                "{0} shown, {1} measured: {2} °C apart. Probe ± {3}, last digit ± {4}, place ± {5} make ± "
                        + "{6} together ({7} standard uncertainties). Within {8} °C it would agree for sure up to "
                        + "{9} and disagree for sure beyond {10}.",
                Numbers.fixed(check.displayCelsius(), 1),
                Numbers.fixed(check.probeCelsius(), 1),
                Numbers.signed(judged.difference(), 2),
                Numbers.fixed(judged.uncertainty().probe(), 2),
                Numbers.fixed(judged.uncertainty().resolution(), 2),
                Numbers.fixed(judged.uncertainty().position(), 2),
                Numbers.fixed(judged.reach(), 2),
                Numbers.fixed(judged.coverageFactor(), 0),
                Numbers.fixed(judged.tolerance(), 1),
                Numbers.fixed(Math.max(0, judged.agreesWithin()), 2),
                Numbers.fixed(judged.disagreesBeyond(), 2));
    }

    /** What to do about the verdict. */
    static String remedy(DisplayCheck.Judgement judged, double wantedCelsius) {
        return switch (judged.verdict()) {
            case AGREES -> Texts.say("Nothing to do.");
            case DISAGREES ->
                Texts.say(
                        "Trust the probe; set {0} to get {1}.",
                        Numbers.fixed(wantedCelsius + judged.difference(), 1), Numbers.fixed(wantedCelsius, 1));
            case CANNOT_TELL ->
                judged.agreesWithin() < 0
                        ? Texts.say(
                                "The uncertainty is larger than what you accept: calibrate the probe, or lay it where the "
                                        + "display's sensor is.")
                        : Texts.say("The difference lies near what you accept: read it off again another day.");
        };
    }

    /** What many comparisons say together, or how many are still lacking. */
    static String together(List<DisplayPair> pairs, Optional<LimitsOfAgreement> limits) {
        return limits.map(found -> Texts.say(
                        "Over {0} pairs the display reads {1} °C on average; on most occasions (95 %) between {2} "
                                + "and {3}. The soft grounds show how sure the limits are.",
                        found.pairs(),
                        Numbers.signed(found.bias(), 2),
                        Numbers.signed(found.lower(), 2),
                        Numbers.signed(found.upper(), 2)))
                .orElseGet(() -> Texts.say(
                        "{0} of {1} pairs: too few to say how far they differ on most occasions. Read the display "
                                + "off on other days, at other temperatures.",
                        pairs.size(), ENOUGH_PAIRS));
    }
}
