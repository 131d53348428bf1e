package org.moultwright.ui.instrument;

import java.util.List;
import java.util.Optional;
import org.moultwright.compute.agreement.DisplayCheck;
import org.moultwright.compute.agreement.LimitsOfAgreement;
import org.moultwright.language.Degrees;
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
                        judged.difference() > 0 ? "Disagrees: reads {0} high" : "Disagrees: reads {0} low",
                        Degrees.apartWords(Math.abs(judged.difference()), 1));
            case CANNOT_TELL -> Texts.say("Cannot tell");
        };
    }

    /** The numbers of a comparison, and what to do. */
    static String arithmetic(DisplayCheck check, DisplayCheck.Judgement judged) {
        return Texts.say(
                "{0} shown, {1} measured: {2} {11} apart. Probe ± {3}, last digit ± {4}, place ± {5} make ± "
                        + "{6} together ({7} standard uncertainties). Within {8} {11} it would agree for sure up to "
                        + "{9} and disagree for sure beyond {10}.",
                Degrees.number(check.displayCelsius(), 1),
                Degrees.number(check.probeCelsius(), 1),
                Degrees.signedApart(judged.difference(), 2),
                Degrees.apart(judged.uncertainty().probe(), 2),
                Degrees.apart(judged.uncertainty().resolution(), 2),
                Degrees.apart(judged.uncertainty().position(), 2),
                Degrees.apart(judged.reach(), 2),
                Numbers.fixed(judged.coverageFactor(), 0),
                Degrees.apart(judged.tolerance(), 1),
                Degrees.apart(Math.max(0, judged.agreesWithin()), 2),
                Degrees.apart(judged.disagreesBeyond(), 2),
                Degrees.symbol());
    }

    /** What to do about the verdict. */
    static String remedy(DisplayCheck.Judgement judged, double wantedCelsius) {
        return switch (judged.verdict()) {
            case AGREES -> Texts.say("Nothing to do.");
            case DISAGREES ->
                Texts.say(
                        "Trust the probe; set {0} to get {1}.",
                        Degrees.number(wantedCelsius + judged.difference(), 1), Degrees.number(wantedCelsius, 1));
            case CANNOT_TELL ->
                judged.agreesWithin() < 0
                        ? Texts.say(
                                "The uncertainty is larger than what you accept: calibrate the probe, or lay it where the "
                                        + "display's sensor is.")
                        : Texts.say("The difference lies near what you accept: read it off again another day.");
        };
    }

    /** @param day since when */
    static String creep(DisplayCreep found, String day) {
        return Texts.say(
                "Since {0} it has crept: at first it read {1} {3} on average, lately {2}. Do not go by it until the "
                        + "probe was tried in ice.",
                day,
                Degrees.signedApart(found.firstCelsius(), 2),
                Degrees.signedApart(found.latelyCelsius(), 2),
                Degrees.symbol());
    }

    /** What many comparisons say together, or how many are still lacking. */
    static String together(List<DisplayPair> pairs, Optional<LimitsOfAgreement> limits) {
        return limits.map(found -> Texts.say(
                        "Over {0} pairs the display reads {1} {4} on average; on most occasions (95 %) between {2} "
                                + "and {3}. The soft grounds show how sure the limits are.",
                        found.pairs(),
                        Degrees.signedApart(found.bias(), 2),
                        Degrees.signedApart(found.lower(), 2),
                        Degrees.signedApart(found.upper(), 2),
                        Degrees.symbol()))
                .orElseGet(() -> Texts.say(
                        "{0} of {1} pairs: too few to say how far they differ on most occasions. Read the display "
                                + "off on other days, at other temperatures.",
                        pairs.size(), ENOUGH_PAIRS));
    }
}
