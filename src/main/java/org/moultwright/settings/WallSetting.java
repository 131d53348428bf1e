package org.moultwright.settings;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.domain.Require;

/**
 * How cold the coldest wall of a container is, as the keeper says: a probe lies on it, or it is so much colder than
 * the air.
 *
 * @param probe the code of the probe that lies on it, empty where none does
 * @param belowAirCelsius how much colder it is than the air, in K; counts only without a probe
 * @param sdCelsius standard uncertainty of that
 */
public record WallSetting(Optional<String> probe, double belowAirCelsius, double sdCelsius) {
    private static final Pattern PROBE = Pattern.compile("probe (?<code>\\S.*)");
    private static final Pattern BELOW = Pattern.compile("(?<below>[\\d.]+) below, give or take (?<sd>[\\d.]+)");

    public WallSetting {
        probe.ifPresent(code -> Require.text("probe", code));
        Require.within("belowAirCelsius", belowAirCelsius, 0, 30);
        Require.within("sdCelsius", sdCelsius, 0, 10);
    }

    public static WallSetting measuredBy(String probe) {
        return new WallSetting(Optional.of(probe), 0, 0);
    }

    public static WallSetting below(double belowAirCelsius, double sdCelsius) {
        return new WallSetting(Optional.empty(), belowAirCelsius, sdCelsius);
    }

    /** As it stands in the file of settings. */
    String text() {
        return probe.map(code -> "probe " + code)
                .orElseGet(() -> String.format(Locale.ROOT, "%s below, give or take %s", belowAirCelsius, sdCelsius));
    }

    /** @throws IllegalArgumentException if it is not understood */
    static WallSetting of(String text) {
        Matcher onProbe = PROBE.matcher(text);
        if (onProbe.matches()) {
            return measuredBy(onProbe.group("code"));
        }
        Matcher below = BELOW.matcher(text);
        Require.that(below.matches(), "a wall is '" + text + "' but must be like '1.5 below, give or take 1.0'");
        return below(Double.parseDouble(below.group("below")), Double.parseDouble(below.group("sd")));
    }
}
