package org.moultwright.ui.finder;

import java.util.List;
import java.util.Locale;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
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
        return String.format(Locale.ROOT, "explains %.0f %%, would read %s", 100 * proposal.understoodFraction(), last);
    }

    static String read(LineForms.WouldRead read) {
        if (!read.fault().isEmpty()) {
            return read.fault();
        }
        String from = read.sensor().isEmpty() ? "" : " from " + read.sensor();
        return values(read.temperatureCelsius(), read.humidityPercent()) + from;
    }

    static String reading(Reading reading, String rawLine) {
        return "%s  →  %s"
                .formatted(
                        rawLine,
                        reading.quality() == Quality.FAULT
                                ? "no measurement"
                                : values(reading.temperatureCelsius(), reading.humidityPercent())
                                        + (reading.quality() == Quality.SUSPECT ? ", doubtful" : ""));
    }

    static String state(LinkState state) {
        if (state instanceof LinkState.Live) {
            return "It speaks.";
        }
        if (state instanceof LinkState.Silent) {
            return "Nothing comes in this form.";
        }
        if (state instanceof LinkState.Lost) {
            return "The port is gone. Plug it in again.";
        }
        return state instanceof LinkState.Refused refused
                ? refused.sentence() + " (" + refused.code() + ")"
                : "Opening the port.";
    }

    /** "line 5: …". */
    static String problem(ProfileProblem problem) {
        return problem.lineNumber() == 0
                ? problem.sentence()
                : "line " + problem.lineNumber() + ": " + problem.sentence();
    }

    private static String values(double celsius, double percent) {
        return Double.isNaN(percent)
                ? String.format(Locale.ROOT, "%.2f °C", celsius)
                : String.format(Locale.ROOT, "%.2f °C, %.1f %%", celsius, percent);
    }
}
