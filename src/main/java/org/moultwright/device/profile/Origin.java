package org.moultwright.device.profile;

import java.util.Locale;
import java.util.regex.Matcher;

/**
 * Who says a line, as far as the line itself tells.
 *
 * @param serial a number no other sensor has, such as a ROM code; empty if it tells none
 * @param address a number no other sensor on the same wire has; empty if it tells none
 * @param sequence the number of the record, empty if it tells none
 */
public record Origin(String serial, String address, String sequence) {
    public static final Origin NONE = new Origin("", "", "");

    static Origin of(Matcher found) {
        return new Origin(mark(found, "serial"), mark(found, "address"), mark(found, "sequence"));
    }

    /** Who it is on its wire, empty if the line does not tell. */
    public String mark() {
        return serial.isEmpty() ? address : serial;
    }

    private static String mark(Matcher found, String name) {
        return Groups.text(found, name)
                .map(text -> text.replaceAll("[\\s:]", "").toUpperCase(Locale.ROOT))
                .orElse("");
    }
}
