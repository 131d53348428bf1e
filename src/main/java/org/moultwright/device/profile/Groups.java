package org.moultwright.device.profile;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The named groups of patterns; one that a pattern does not have took no part. */
final class Groups {
    private Groups() {}

    static boolean has(Pattern pattern, String name) {
        return pattern.pattern().contains("(?<" + name + ">");
    }

    static Optional<String> text(Matcher found, String name) {
        return has(found.pattern(), name) ? Optional.ofNullable(found.group(name)) : Optional.empty();
    }
}
