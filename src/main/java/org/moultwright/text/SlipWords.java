package org.moultwright.text;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.Brood;
import org.moultwright.domain.InstantRange;
import org.moultwright.language.Dates;
import org.moultwright.language.Texts;

/** The words of a hand-over slip. */
public final class SlipWords {
    public static final String TITLE = Texts.say("Hand-over slip");

    /** Whether papers are needed, and which, is never decided here. */
    public static final List<String> CAUTIONS = List.of(
            Texts.say("Some species may be kept, moved, given away or sold only with papers, and some with a "
                    + "source code on them. Which ones, and which code, the law of the place decides, not this "
                    + "slip. Ask the authority that applies before the animals change hands or cross a border."),
            Texts.say(
                    "This slip tells what the keeper wrote down. It is no permit, no certificate and no health report."));

    private SlipWords() {}

    /** "3 May 2026". */
    public static String day(Instant instant, DayWords days) {
        return Dates.dayAndYear().format(days.date(instant));
    }

    /** "Brood CC-26-A, sac laid 2 March 2026, pulled 25 March 2026." What nobody knows is left out. */
    public static String origin(Brood brood, DayWords days) {
        String code = brood.code();
        Optional<String> laid = brood.laid().map(range -> laid(range, days));
        Optional<String> pulled = brood.pulled().map(at -> day(at, days));
        if (laid.isPresent()) {
            return pulled.isPresent()
                    ? Texts.say(
                            "Brood {0}, sac laid {1}, sac taken from its mother {2}.", code, laid.get(), pulled.get())
                    : Texts.say("Brood {0}, sac laid {1}.", code, laid.get());
        }
        return pulled.isPresent()
                ? Texts.say("Brood {0}, sac taken from its mother {1}.", code, pulled.get())
                : Texts.say("Brood {0}.", code);
    }

    private static String laid(InstantRange range, DayWords days) {
        String earliest = day(range.earliest(), days);
        String latest = day(range.last(), days);
        return earliest.equals(latest) ? latest : Texts.say("{0} to {1}", earliest, latest);
    }

    /** "7 animals in all", "1 animal in all". */
    public static String total(int animals) {
        return Texts.count(animals, "1 animal in all", "{0} animals in all", animals);
    }
}
