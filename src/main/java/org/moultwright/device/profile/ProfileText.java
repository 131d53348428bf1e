package org.moultwright.device.profile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.moultwright.domain.Require;

/** The keys of a profile's file and the values each has, in order. */
final class ProfileText {
    private static final Set<String> KEYS = Set.of(
            "code", "title", "port", "unit", "limits", "disconnected", "power-on", "let", "record", "fault", "test");

    private final Map<String, List<String>> values = new LinkedHashMap<>();

    private ProfileText() {}

    static ProfileText of(List<String> lines) {
        ProfileText text = new ProfileText();
        lines.stream().filter(line -> !line.isBlank() && !line.startsWith("#")).forEach(text::add);
        return text;
    }

    private void add(String line) {
        int colon = line.indexOf(": ");
        String key = line.substring(0, Math.max(colon, 0));
        Require.that(KEYS.contains(key), "'%s' does not start with one of %s".formatted(line, KEYS));
        values.computeIfAbsent(key, any -> new ArrayList<>())
                .add(line.substring(colon + 2).strip());
    }

    /** All values of a key. */
    List<String> all(String key) {
        return values.getOrDefault(key, List.of());
    }

    /** The value of a key that must be there once. */
    String one(String key) {
        Require.that(
                all(key).size() == 1, "%s is there %d times but must be there once".formatted(key, all(key).size()));
        return all(key).get(0);
    }

    /** The number of a key, NaN if it is not there. */
    double number(String key) {
        return all(key).isEmpty() ? Double.NaN : Double.parseDouble(one(key));
    }
}
