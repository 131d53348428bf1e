package org.moultwright.device.profile;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.domain.Reading;
import org.moultwright.domain.Require;
import org.moultwright.language.Texts;

/** Reads a channel as a profile declares it. */
final class ChannelReader {
    private static final Pattern HEAD = Pattern.compile("(temperature) (C|F|pt100|ntc10k|type-k)|(humidity) (%)");
    private static final Pattern LIMITS = Pattern.compile("(\\S+) (\\S+)");
    private static final Set<String> CLAUSES = Set.of("as", "scale", "offset", "none", "limits", "clip");
    private static final String EXAMPLE =
            "temperature C, as s16 AB, scale 0.1, offset -40, none -999 999, limits -40 85, clip";

    private ChannelReader() {}

    static Channel read(String declared) {
        String[] parts = declared.split(",\\s*", -1);
        Matcher head = Words.matched(HEAD, parts[0], EXAMPLE);
        boolean isTemperature = head.group(1) != null;
        Map<String, String> clauses = clauses(Arrays.asList(parts).subList(1, parts.length));
        double lowest = isTemperature ? Reading.LOWEST_CELSIUS : 0;
        double highest = isTemperature ? Reading.HIGHEST_CELSIUS : 100;
        Matcher limits = Words.matched(LIMITS, clauses.getOrDefault("limits", lowest + " " + highest), "limits -40 85");
        return new Channel(
                head.group(isTemperature ? 1 : 3),
                Unit.named(head.group(isTemperature ? 2 : 4)),
                Encoding.of(clauses.getOrDefault("as", "decimal")),
                ratio(clauses.getOrDefault("scale", "1")),
                Words.number(clauses.getOrDefault("offset", "0")),
                numbers(clauses.getOrDefault("none", "")),
                Require.within("lowest limit", Words.number(limits.group(1)), lowest, highest),
                Require.within("highest limit", Words.number(limits.group(2)), Words.number(limits.group(1)), highest),
                clauses.containsKey("clip"));
    }

    private static Map<String, String> clauses(List<String> parts) {
        Map<String, String> clauses = new HashMap<>();
        for (String part : parts) {
            String[] clause = part.split(" ", 2);
            Require.that(
                    CLAUSES.contains(clause[0]),
                    Texts.say("'{0}' is not understood; write it like: {1}", part, EXAMPLE));
            clauses.put(clause[0], clause.length == 2 ? clause[1] : "");
        }
        return clauses;
    }

    private static List<Double> numbers(String value) {
        return value.isEmpty()
                ? List.of()
                : Arrays.stream(value.split(" ", -1)).map(Words::number).toList();
    }

    private static double ratio(String value) {
        String[] terms = value.split("/", 2);
        return Words.number(terms[0]) / (terms.length == 2 ? Words.number(terms[1]) : 1);
    }
}
