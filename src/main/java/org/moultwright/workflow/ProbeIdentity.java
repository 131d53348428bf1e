package org.moultwright.workflow;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.language.Texts;

/**
 * Which probe it is, whatever port it is plugged into: the sensor itself if it tells a number no other has, else
 * the adapter it hangs on, with its address there. A port's name is no part of it: it may come to mean another
 * probe.
 *
 * @param sensor a number no other sensor has, such as a ROM code; empty if it tells none
 * @param adapter maker, product and serial number of the adapter; empty if it has none, or is not needed
 * @param address the sensor's address on its wire; empty if it has none, or is not needed
 */
public record ProbeIdentity(String sensor, String adapter, String address) {
    /** Nothing is known of it. */
    public static final ProbeIdentity UNKNOWN = new ProbeIdentity("", "", "");

    private static final Pattern WORDS =
            Pattern.compile("sensor (\\S+)|(?:adapter (\\S+))?(?:(?:(?<=\\S) )?address (\\S+))?");

    public static ProbeIdentity ofSensor(String sensor) {
        return new ProbeIdentity(sensor, "", "");
    }

    /** Of a sensor that has an address on the wire of an adapter; either may be empty. */
    public static ProbeIdentity ofAdapter(String adapter, String address) {
        return new ProbeIdentity("", adapter, address);
    }

    /** The identity these words tell, empty if they tell none. */
    public static Optional<ProbeIdentity> fromWords(String words) {
        Matcher found = WORDS.matcher(words);
        return found.matches()
                ? Optional.of(new ProbeIdentity(text(found, 1), text(found, 2), text(found, 3)))
                : Optional.empty();
    }

    private static String text(Matcher found, int group) {
        return Optional.ofNullable(found.group(group)).orElse("");
    }

    public boolean isKnown() {
        return !equals(UNKNOWN);
    }

    /** Whether the sensor itself tells it, so that others on its wire can be told from it. */
    public boolean isToldByTheSensor() {
        return !sensor.isEmpty() || !address.isEmpty();
    }

    /** In words, to be kept and read again. */
    public String words() {
        if (!sensor.isEmpty()) {
            return Texts.say("sensor {0}", sensor);
        }
        if (address.isEmpty()) {
            return adapter.isEmpty() ? "" : Texts.say("adapter {0}", adapter);
        }
        return adapter.isEmpty()
                ? Texts.say("address {0}", address)
                : Texts.say("adapter {0} address {1}", adapter, address);
    }
}
