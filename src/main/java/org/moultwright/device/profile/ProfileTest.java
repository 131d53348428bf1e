package org.moultwright.device.profile;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A line a profile carries with what it must make of it.
 *
 * @param lineNumber where in the profile it stands
 * @param line the line as it is kept
 * @param expected what it says; a fault without a cause may have any
 * @param mark who says it
 * @param settings what is set otherwise than usual
 */
record ProfileTest(int lineNumber, String line, Optional<Decoded> expected, String mark, Map<String, String> settings) {
    private static final double TOLERANCE = 1e-3;
    private static final Pattern WORDS = Pattern.compile("\"(?<line>.*)\" -> "
            + "(?:(?<word>ignored|unreadable)|fault(?: (?<cause>(?!from|with)[a-z-]+))?"
            + "|(?<temperature>[-+.\\d]+)(?: (?<humidity>[-+.\\d]+|none))?)"
            + "(?: from (?<mark>\\S+))?(?: with (?<settings>[a-z-]+=\\S+(?: [a-z-]+=\\S+)*))?");
    private static final String EXAMPLE = "\"T=25.7C H=74.2%\" -> 25.7 74.2; or -> fault, -> ignored, -> unreadable";

    static ProfileTest of(ProfileText.Entry entry) {
        Matcher words = Words.matched(WORDS, entry.value(), EXAMPLE);
        String mark = words.group("mark");
        String chosen = words.group("settings");
        return new ProfileTest(
                entry.lineNumber(),
                Words.unescaped(words.group("line")),
                expected(words),
                mark == null ? "" : mark,
                chosen == null ? Map.of() : ProfileChoice.settings(chosen));
    }

    boolean holds(Told told) {
        boolean isSame =
                expected.map(wanted -> isSame(wanted, told.decoded())).orElse(told.decoded() instanceof Decoded.Fault);
        return isSame && (mark.isEmpty() || mark.equals(told.origin().mark()));
    }

    /** What it expects, in words. */
    String wanted() {
        return expected.map(Decoded::words).orElse("a fault") + (mark.isEmpty() ? "" : " from " + mark);
    }

    private static Optional<Decoded> expected(Matcher words) {
        if (words.group("word") != null) {
            return Optional.of(
                    words.group("word").equals("ignored") ? new Decoded.Ignored() : new Decoded.Unreadable());
        }
        if (words.group("temperature") != null) {
            return Optional.of(new Decoded.Measured(
                    Words.number(words.group("temperature")), humidityPercent(words.group("humidity"))));
        }
        return Optional.ofNullable(words.group("cause")).map(cause -> new Decoded.Fault(FaultCause.named(cause)));
    }

    private static double humidityPercent(@Nullable String told) {
        if (told == null) {
            return Double.NaN;
        }
        return told.equals("none") ? Double.POSITIVE_INFINITY : Words.number(told);
    }

    private static boolean isSame(Decoded wanted, Decoded told) {
        if (wanted instanceof Decoded.Measured one && told instanceof Decoded.Measured other) {
            return isSame(one.temperatureCelsius(), other.temperatureCelsius())
                    && isSame(one.humidityPercent(), other.humidityPercent());
        }
        return wanted.equals(told);
    }

    private static boolean isSame(double wanted, double found) {
        return Math.abs(wanted - found) <= TOLERANCE || Double.compare(wanted, found) == 0;
    }
}
