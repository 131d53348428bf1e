package org.moultwright.device.profile;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.device.check.Checksum;
import org.moultwright.device.check.Hex;
import org.moultwright.language.Texts;

/**
 * A check value in a record.
 *
 * @param checksum how it is made
 * @param hex whether the checked group holds the bytes in hexadecimal digits, or as they are
 * @param over the checked group
 * @param in the group that holds the check in hexadecimal digits; empty if the checked group ends in it
 */
record CheckRule(Checksum checksum, boolean hex, String over, Optional<String> in) {
    private static final Pattern WORDS = Pattern.compile("(\\S+) (hex|text) ([a-zA-Z]+)(?: in ([a-zA-Z]+))?");
    private static final String EXAMPLE = "crc8-1wire hex pad; or: xor8 text body in check";

    static CheckRule of(String declared) {
        Matcher words = Words.matched(WORDS, declared, EXAMPLE);
        Checksum checksum = Checksum.fromKey(words.group(1))
                .orElseThrow(() -> new IllegalArgumentException(Texts.say(
                        "checksum is '{0}' but must be one of {1}",
                        words.group(1),
                        Arrays.stream(Checksum.values()).map(Checksum::key).toList())));
        return new CheckRule(
                checksum, words.group(2).equals("hex"), words.group(3), Optional.ofNullable(words.group(4)));
    }

    /** Whether a record's check fits; a record without the checked group has none to fit. */
    boolean holds(Matcher found) {
        return Groups.text(found, over)
                .map(checked -> fits(bytes(checked), found))
                .orElse(true);
    }

    private boolean fits(byte[] checked, Matcher found) {
        return in.map(group -> Groups.text(found, group)
                        .map(check -> Arrays.equals(Hex.bytes(check), checksum.checkOf(checked)))
                        .orElse(false))
                .orElseGet(() -> checksum.endsRightly(checked));
    }

    private byte[] bytes(String text) {
        return hex ? Hex.bytes(text) : text.getBytes(StandardCharsets.ISO_8859_1);
    }
}
