package org.moultwright.device.profile;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.domain.Require;
import org.moultwright.language.Texts;

/** What the names in a profile stand for: pieces of patterns, and the values of its settings. */
final class Names {
    private static final Pattern LET = Pattern.compile("([a-z-]+) = (.+)");

    private final Map<String, String> meanings = new HashMap<>(Map.of(
            // A number, with a point only, with a comma only.
            "{number}", "(?:[+-]?(?:\\d{1,12}(?:[.,]\\d{1,12})?|[.,]\\d{1,12})(?:E[+-]?\\d{1,3})?)",
            "{point-number}", "(?:[+-]?(?:\\d{1,12}(?:\\.\\d{0,12})?|\\.\\d{1,12})(?:E[+-]?\\d{1,3})?)",
            "{comma-number}", "(?:[+-]?\\d{1,12}(?:,\\d{1,12})?)",
            // What instruments say in place of a number: forms met in makers' manuals.
            "{nothing}", "(?:err|error|[+-]?(?:OL|OFL|NAN|INF)|-[HLE]-|-{2,}|fail|null|none)",
            // What a board says when it starts; common practice, no source.
            "{banner}",
                    "(?:re)?(?:boot|start)(?:ed|ing|up)?|reset|rst|power(?:ed)?.?(?:on|up)|ready|firmware|version"));

    /**
     * The settings as chosen, or as usual.
     *
     * @throws IllegalArgumentException if what was chosen may not be
     */
    void choose(List<Setting> settings, Map<String, String> chosen) {
        List<String> known = settings.stream().map(Setting::name).toList();
        chosen.keySet()
                .forEach(name -> Require.that(
                        known.contains(name),
                        Texts.say("'{0}' is no setting of this profile; it has {1}", name, known)));
        for (Setting setting : settings) {
            String value = setting.allowed(chosen.getOrDefault(setting.name(), setting.usual()));
            meanings.put("{" + setting.name() + "}", value);
            if (value.matches("\\d+") && Integer.parseInt(value) <= 0xFF) {
                meanings.put("{#" + setting.name() + "}", "%02X".formatted(Integer.parseInt(value)));
            }
        }
    }

    /** Gives a piece of a pattern a name. */
    void let(String declared) {
        Matcher let = Words.matched(LET, declared, "number = \\d+");
        meanings.put("{" + let.group(1) + "}", "(?:" + in(let.group(2)) + ")");
    }

    /** A value with every name replaced by what it stands for. */
    String in(String value) {
        String meant = value;
        for (Map.Entry<String, String> meaning : meanings.entrySet()) {
            meant = meant.replace(meaning.getKey(), meaning.getValue());
        }
        return meant;
    }
}
