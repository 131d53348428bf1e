package org.moultwright.device.profile;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.domain.Require;

/**
 * Reads a profile's file: lines of {@code key: value}, {@code #} starts a comment line.
 *
 * <table>
 * <caption>Keys</caption>
 * <tr><td>code, title</td><td>what it is called, for the command line and for the keeper</td></tr>
 * <tr><td>port</td><td>such as {@code 9600 8N1}, or {@code 115200 8N1 DTR}</td></tr>
 * <tr><td>unit</td><td>C or F, of a temperature that names none</td></tr>
 * <tr><td>limits</td><td>lowest and highest in °C</td></tr>
 * <tr><td>disconnected, power-on</td><td>values in °C that are no measurement; optional</td></tr>
 * <tr><td>let</td><td>{@code name = pattern}, later written <code>{name}</code></td></tr>
 * <tr><td>record, fault</td><td>patterns; letter case does not matter</td></tr>
 * <tr><td>test</td><td>a line in quotes, {@code ->}, and what it says</td></tr>
 * </table>
 */
final class ProfileReader {
    private static final Pattern PORT = Pattern.compile("(\\d{2,7}) ([5-8])([NOE])([12])( DTR)?");
    private static final Pattern LIMITS = Pattern.compile("(\\S+) (\\S+)");
    private static final Pattern LET = Pattern.compile("([a-z-]+) = (.+)");
    private static final Pattern TEST = Pattern.compile("\"(.*)\" -> (?:(fault)|(unreadable)|(\\S+)(?: (\\S+))?)");
    private static final Pattern BYTE = Pattern.compile("\\\\x([0-9A-F]{2})");

    private final ProfileText text;
    private final Map<String, String> named = new HashMap<>();

    private ProfileReader(ProfileText text) {
        this.text = text;
    }

    /**
     * The profile a file declares.
     *
     * @throws IllegalArgumentException if the file does not declare one
     */
    static LineProfile read(List<String> lines) {
        return new LineProfile(new ProfileReader(ProfileText.of(lines)).file());
    }

    private ProfileFile file() {
        text.all("let").forEach(this::name);
        List<Pattern> records = patterns("record");
        List<ProfileTest> tests =
                text.all("test").stream().map(ProfileReader::test).toList();
        Require.atLeast("number of record patterns", records.size(), 1);
        Require.atLeast("number of test lines", tests.size(), 1);
        return new ProfileFile(
                text.one("code"),
                text.one("title"),
                lineSettings(matched(PORT, "port", text.one("port"))),
                TemperatureUnit.valueOf(text.one("unit")),
                limits(matched(LIMITS, "limits", text.one("limits"))),
                records,
                patterns("fault"),
                tests);
    }

    private void name(String value) {
        Matcher let = matched(LET, "let", value);
        named.put(let.group(1), "(?:" + resolved(let.group(2)) + ")");
    }

    private List<Pattern> patterns(String key) {
        Function<String, Pattern> compiled = pattern -> Pattern.compile(resolved(pattern), Pattern.CASE_INSENSITIVE);
        return text.all(key).stream().map(compiled).toList();
    }

    private String resolved(String pattern) {
        String resolved = pattern;
        for (Map.Entry<String, String> entry : named.entrySet()) {
            resolved = resolved.replace("{" + entry.getKey() + "}", entry.getValue());
        }
        return resolved;
    }

    private Limits limits(Matcher limits) {
        return new Limits(
                Double.parseDouble(limits.group(1)),
                Double.parseDouble(limits.group(2)),
                text.number("disconnected"),
                text.number("power-on"));
    }

    private static LineSettings lineSettings(Matcher port) {
        return new LineSettings(
                Integer.parseInt(port.group(1)),
                Integer.parseInt(port.group(2)),
                LineSettings.Parity.valueOf(port.group(3)),
                Integer.parseInt(port.group(4)),
                port.group(5) != null);
    }

    private static ProfileTest test(String value) {
        Matcher test = matched(TEST, "test", value);
        String line = BYTE.matcher(test.group(1))
                .replaceAll(
                        octet -> Matcher.quoteReplacement(Character.toString(Integer.parseInt(octet.group(1), 16))));
        return new ProfileTest(line, expected(test));
    }

    private static Decoded expected(Matcher test) {
        if (test.group(2) != null) {
            return new Decoded.Fault();
        }
        if (test.group(3) != null) {
            return new Decoded.Unreadable();
        }
        String humidity = test.group(5);
        return new Decoded.Measured(
                Double.parseDouble(test.group(4)), humidity == null ? Double.NaN : Double.parseDouble(humidity));
    }

    private static Matcher matched(Pattern pattern, String key, String value) {
        Matcher matcher = pattern.matcher(value);
        Require.that(matcher.matches(), "%s is '%s' but must look like %s".formatted(key, value, pattern));
        return matcher;
    }
}
