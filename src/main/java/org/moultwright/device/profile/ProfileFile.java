package org.moultwright.device.profile;

import java.util.List;
import java.util.regex.Pattern;

/**
 * What a profile's file declares.
 *
 * @param code by which it is chosen
 * @param title what the keeper calls it
 * @param lineSettings how the port is set
 * @param unit of a temperature that names none
 * @param limits what the probe can tell
 * @param records patterns of a line with a measurement, tried in order; each has a group
 *     {@code temperature} and may have {@code unit} and {@code humidity}
 * @param faults patterns of a line by which the instrument says that it cannot measure
 * @param tests lines with what they must be read as, at least one
 */
record ProfileFile(
        String code,
        String title,
        LineSettings lineSettings,
        TemperatureUnit unit,
        Limits limits,
        List<Pattern> records,
        List<Pattern> faults,
        List<ProfileTest> tests) {}
