package org.moultwright.device.profile;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.domain.Require;
import org.moultwright.language.Texts;

/**
 * A profile as it is chosen: its code, and what is set otherwise than usual, such as {@code modbus-float32
 * address=17 order=CDAB}.
 *
 * @param code of the profile
 * @param settings by name
 */
record ProfileChoice(String code, Map<String, String> settings) {
    private static final Pattern SETTING = Pattern.compile("([a-z-]+)=([\\w:]+)");

    /**
     * The choice these words make.
     *
     * @throws IllegalArgumentException if they make none
     */
    static ProfileChoice of(String words) {
        String[] parts = words.strip().split(" +", 2);
        return new ProfileChoice(parts[0], parts.length == 1 ? Map.of() : settings(parts[1]));
    }

    /** Settings written as {@code name=value name=value}. */
    static Map<String, String> settings(String words) {
        Map<String, String> settings = new LinkedHashMap<>();
        for (String word : words.split(" +", -1)) {
            Matcher setting = Words.matched(SETTING, word, "address=17");
            Require.that(
                    settings.putIfAbsent(setting.group(1), setting.group(2)) == null,
                    Texts.say("'{0}' is set twice", setting.group(1)));
        }
        return settings;
    }

    /** The words it is made with. */
    String words() {
        StringBuilder words = new StringBuilder(code);
        settings.forEach(
                (name, value) -> words.append(' ').append(name).append('=').append(value));
        return words.toString();
    }
}
