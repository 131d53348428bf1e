package org.moultwright.settings;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.domain.ColdestWall;
import org.moultwright.domain.Require;

/** What the keeper said of a wall, as a value of settings. */
final class WallText {
    private static final Pattern PROBE = Pattern.compile("probe (?<code>\\S.*)");
    private static final Pattern BELOW = Pattern.compile("(?<below>[\\d.]+) below, give or take (?<sd>[\\d.]+)");

    private WallText() {}

    static String of(ColdestWall wall) {
        return wall.probe()
                .map(code -> "probe " + code)
                .orElseGet(() -> String.format(
                        Locale.ROOT, "%s below, give or take %s", wall.belowAirCelsius(), wall.sdCelsius()));
    }

    /** @throws IllegalArgumentException if it is not understood */
    static ColdestWall of(String text) {
        Matcher onProbe = PROBE.matcher(text);
        if (onProbe.matches()) {
            return ColdestWall.measuredBy(onProbe.group("code"));
        }
        Matcher below = BELOW.matcher(text);
        Require.that(below.matches(), "a wall is '" + text + "' but must be like '1.5 below, give or take 1.0'");
        return ColdestWall.below(Double.parseDouble(below.group("below")), Double.parseDouble(below.group("sd")));
    }
}
