package org.moultwright.settings;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.moultwright.domain.AlarmLimits;

/** How the keeper is woken, as values of settings. */
final class AlarmSettingsText {
    static final String LIMITS = "alarm-limits";
    static final String WALL = "alarm-wall";
    static final String SOUND = "alarm-sound";
    static final String NOTICE = "alarm-notice";
    static final String COMMAND = "alarm-command";

    private static final String ON = "on";
    private static final String OFF = "off";
    private static final int COUNT = 4;

    private AlarmSettingsText() {}

    /** "20 23 29 31": very low, low, high, very high, in °C. */
    static String limits(AlarmLimits limits) {
        return List.of(limits.veryLowCelsius(), limits.lowCelsius(), limits.highCelsius(), limits.veryHighCelsius())
                .stream()
                .map(celsius -> Double.toString(celsius))
                .collect(Collectors.joining(" "));
    }

    /** @throws IllegalArgumentException if these are no four temperatures in order */
    static AlarmLimits limits(String text) {
        double[] celsius =
                Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
        if (celsius.length != COUNT) {
            throw new IllegalArgumentException("alarm-limits hold " + text + " but must hold four temperatures");
        }
        return new AlarmLimits(celsius[0], celsius[1], celsius[2], celsius[3]);
    }

    static String onOrOff(boolean isOn) {
        return isOn ? ON : OFF;
    }

    /** @throws IllegalArgumentException if it is neither on nor off */
    static boolean onOrOff(String name, String text) {
        if (!text.equals(ON) && !text.equals(OFF)) {
            throw new IllegalArgumentException(name + " is " + text + " but must be on or off");
        }
        return text.equals(ON);
    }
}
