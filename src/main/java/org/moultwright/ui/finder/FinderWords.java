package org.moultwright.ui.finder;

import java.util.List;
import org.moultwright.domain.Reading;
import org.moultwright.language.Degrees;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.workflow.LineForms;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.ProfileProblem;

/** Forms of line, and what they read, in words. */
final class FinderWords {
    private FinderWords() {}

    /** "explains 96 %: 25.7 °C, 74 %; fault" from the last records. */
    static String proposal(LineForms.Proposal proposal) {
        List<LineForms.WouldRead> reads = proposal.reads();
        String last = String.join(
                "; ",
                reads.subList(Math.max(0, reads.size() - 3), reads.size()).stream()
                        .map(FinderWords::read)
                        .toList());
        return Texts.say("explains {0} %, would read {1}", Numbers.fixed(100 * proposal.understoodFraction(), 0), last);
    }

    static String read(LineForms.WouldRead read) {
        if (!read.fault().isEmpty()) {
            return read.fault();
        }
        String values = values(read.temperatureCelsius(), read.humidityPercent());
        return read.sensor().isEmpty() ? values : Texts.say("{0} from {1}", values, read.sensor());
    }

    static String reading(Reading reading, String rawLine) {
        String values = values(reading.temperatureCelsius(), reading.humidityPercent());
        String meant =
                switch (reading.quality()) {
                    case FAULT -> Texts.say("no measurement");
                    case SUSPECT -> Texts.say("{0}, doubtful", values);
                    default -> values;
                };
        return rawLine + "  →  " + meant;
    }

    static String state(LinkState state) {
        if (state instanceof LinkState.Live) {
            return Texts.say("It speaks.");
        }
        if (state instanceof LinkState.Silent) {
            return Texts.say("Nothing comes in this form.");
        }
        if (state instanceof LinkState.Lost) {
            return Texts.say("The port is gone. Plug it in again.");
        }
        return state instanceof LinkState.Refused refused
                ? refused.sentence() + " (" + refused.code() + ")"
                : Texts.say("Opening the port.");
    }

    /** "line 5: …". */
    static String problem(ProfileProblem problem) {
        return problem.lineNumber() == 0
                ? problem.sentence()
                : Texts.say("line {0}: {1}", problem.lineNumber(), problem.sentence());
    }

    private static String values(double celsius, double percent) {
        return Double.isNaN(percent)
                ? Degrees.words(celsius, 2)
                : Degrees.words(celsius, 2) + ", " + Numbers.fixed(percent, 1) + " %";
    }
}
