package org.moultwright.ui;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.moultwright.language.PseudoLanguage;

/** What of a shown text was never said: neither in marks nor a name, a code, a number, a unit or a keeper's own word. */
final class Unsaid {
    /** Two letters at least, in one run of signs without a digit: what holds a digit is a code, a path or a port. */
    private static final Pattern WORD = Pattern.compile("(?<![\\S])[^\\s\\d]*\\p{L}{2}[^\\s\\d]*(?![\\S])");

    /** Units and what is written the same everywhere. */
    private static final List<String> SAME = List.of(
            "mm",
            "ml",
            "min",
            "kPa",
            "hPa",
            "PDF",
            "CRPS",
            "RH",
            "Moultwright",
            "Letter",
            "English",
            "Europe/Lisbon",
            "plain-number",
            "csv",
            "Esc");

    /** Days and months come from the Java library, in the language's locale. */
    private static final List<String> CALENDAR = List.of(
            "January",
            "February",
            "March",
            "April",
            "May",
            "June",
            "July",
            "August",
            "September",
            "October",
            "November",
            "December",
            "Jan",
            "Feb",
            "Mar",
            "Apr",
            "Jun",
            "Jul",
            "Aug",
            "Sep",
            "Sept",
            "Oct",
            "Nov",
            "Dec",
            "Monday",
            "Tuesday",
            "Wednesday",
            "Thursday",
            "Friday",
            "Saturday",
            "Sunday",
            "Mon",
            "Tue",
            "Wed",
            "Thu",
            "Fri",
            "Sat",
            "Sun");

    /** Names of places, species and the like that the rooms of the tests hold: a keeper's own words. */
    private static final List<String> KEEPERS = List.of(
            "incubator",
            "box",
            "rack",
            "shelf",
            "room",
            "mother",
            "top",
            "base",
            "Inventa",
            "pulchra",
            "Chromatopelma",
            "cyaneopubescens",
            "Temperatur",
            "Feuchte",
            "Zeit",
            "Nr",
            "Batterie",
            "Logger",
            "ERR");

    /** Where shipped timings are from stands in their file, in English. */
    private static final Pattern SOURCE =
            Pattern.compile("[^:]*: (The form is from|An assumption, no source|Common practice, no source).*");

    /** What the round's own tests put into the top line. */
    private static final List<String> INVENTED = List.of("A1 and A2 become slings", ", 4 to 8 May");

    /** A field of a code's pattern, written as the pattern has it. */
    private static final Pattern FIELD = Pattern.compile("\\{\\p{L}+\\}");

    private Unsaid() {}

    /** The words left over. */
    static String of(String shown) {
        if (SOURCE.matcher(shown).matches() || INVENTED.contains(shown)) {
            return "";
        }
        return WORD.matcher(FIELD.matcher(outside(shown)).replaceAll(" "))
                .results()
                .map(found -> found.group().replaceAll("^\\P{L}+|\\P{L}+$", ""))
                .filter(word -> !SAME.contains(word) && !CALENDAR.contains(word) && !KEEPERS.contains(word))
                .collect(Collectors.joining(" "));
    }

    /** What stands outside of all marks. */
    private static String outside(String shown) {
        StringBuilder outside = new StringBuilder();
        int depth = 0;
        Matcher parts = Pattern.compile(PseudoLanguage.OPEN + "|" + PseudoLanguage.CLOSE)
                .matcher(shown);
        int at = 0;
        while (parts.find()) {
            if (depth == 0) {
                outside.append(shown, at, parts.start()).append(' ');
            }
            depth += parts.group().equals(PseudoLanguage.OPEN) ? 1 : -1;
            at = parts.end();
        }
        return depth == 0 ? outside.append(shown, at, shown.length()).toString() : outside.toString();
    }
}
