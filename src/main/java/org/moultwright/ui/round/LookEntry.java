package org.moultwright.ui.round;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.domain.Look;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Typable;
import org.moultwright.workflow.SheetDraft;

/**
 * How a look is written in a field of the sheet: {@code 12} all counted, {@code 7/20} seven of twenty looked
 * at, {@code seen} at least one, {@code none} looked and none, nothing at all for not looked.
 */
final class LookEntry {
    static final String SEEN = "seen";
    static final String NONE = "none";
    static final String NOT_LOOKED = "";

    static final Typable TYPABLE =
            Typable.figures(SheetDraft.TYPABLE, Texts.say("Only a count, or 7/20 for seven of twenty."));

    private static final Pattern FULL = Pattern.compile("\\d{1,5}");
    private static final Pattern SAMPLE = Pattern.compile("(\\d{1,5})/(\\d{1,5})");

    private LookEntry() {}

    /** The look a text stands for, empty while it stands for none yet. */
    static Optional<Look> parse(String text) {
        return switch (text) {
            case NOT_LOOKED -> Optional.of(new Look.NotLooked());
            case SEEN -> Optional.of(new Look.Seen());
            case NONE -> Optional.of(new Look.None());
            default ->
                FULL.matcher(text).matches()
                        ? Optional.of(new Look.Full(Integer.parseInt(text)))
                        : sample(SAMPLE.matcher(text));
        };
    }

    /** What is wrong with a text, in a sentence; empty when nothing is. */
    static String problem(String text) {
        if (parse(text).isPresent()) {
            return "";
        }
        return text.contains("/")
                ? Texts.say("Write 7/20 for seven of twenty looked at.")
                : Texts.say("A count is a whole number, such as {0}.", 58);
    }

    private static Optional<Look> sample(Matcher matcher) {
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int count = Integer.parseInt(matcher.group(1));
        int of = Integer.parseInt(matcher.group(2));
        return of >= Math.max(1, count) ? Optional.of(new Look.Sample(count, of)) : Optional.empty();
    }
}
