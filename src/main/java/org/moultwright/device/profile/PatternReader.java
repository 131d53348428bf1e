package org.moultwright.device.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import org.moultwright.domain.Require;
import org.moultwright.language.Texts;

/** Reads the patterns of a profile's text. */
final class PatternReader {
    private static final Pattern REJECT = Pattern.compile("([a-z-]+) (.+)");
    private static final int LONGEST = 4000;

    private final ProfileText text;
    private final Names names;

    PatternReader(ProfileText text, Names names) {
        this.text = text;
        this.names = names;
    }

    ProfileFile.Patterns read() {
        List<ProfileFile.Sign> faults = new ArrayList<>(signs("fault", FaultCause.INSTRUMENT));
        faults.addAll(signs("restart", FaultCause.RESTART));
        return new ProfileFile.Patterns(
                patterns("ignore"), text.all("reject", entry -> reject(entry.value())), patterns("record"), faults);
    }

    private List<Pattern> patterns(String key) {
        return text.all(key, entry -> pattern(entry.value()));
    }

    private List<ProfileFile.Sign> signs(String key, FaultCause cause) {
        return text.all(key, entry -> new ProfileFile.Sign(cause, pattern(entry.value())));
    }

    private ProfileFile.Sign reject(String value) {
        Matcher words = Words.matched(REJECT, value, "empty ^0+$");
        return new ProfileFile.Sign(FaultCause.named(words.group(1)), pattern(words.group(2)));
    }

    private Pattern pattern(String value) {
        String meant = names.in(value);
        Require.that(
                meant.length() <= LONGEST,
                Texts.say(
                        "the pattern is {0} characters long with its names put in but may be {1}",
                        meant.length(), LONGEST));
        try {
            return Pattern.compile(meant, Pattern.CASE_INSENSITIVE);
        } catch (PatternSyntaxException e) {
            throw new IllegalArgumentException(
                    Texts.say(
                            "the pattern is not understood: {0}, near character {1} of {2}",
                            e.getDescription(), e.getIndex() + 1, meant),
                    e);
        }
    }
}
