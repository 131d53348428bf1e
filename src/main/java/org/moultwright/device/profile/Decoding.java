package org.moultwright.device.profile;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import org.moultwright.device.check.Hex;
import org.moultwright.language.Texts;

/** What is made of a record before patterns look at it. */
enum Decoding {
    /** The signs instruments write in several ways are brought to one. */
    TEXT("text") {
        @Override
        Optional<String> plain(String raw) {
            return Optional.of(Signs.plain(raw));
        }
    },
    /** An object in JSON becomes {@code name=value;} for every value in it. */
    JSON("json") {
        @Override
        Optional<String> plain(String raw) {
            return FlatJson.of(raw);
        }
    },
    /** Bytes are kept and looked at as hexadecimal digits, without anything between them. */
    HEX("hex") {
        @Override
        String raw(String bytes) {
            return Hex.of(bytes.getBytes(StandardCharsets.ISO_8859_1));
        }

        @Override
        Optional<String> plain(String raw) {
            return Optional.of(raw.replace(" ", ""));
        }
    };

    private final String key;

    Decoding(String key) {
        this.key = key;
    }

    static Decoding named(String key) {
        return Arrays.stream(values())
                .filter(decoding -> decoding.key.equals(key))
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException(Texts.say("decode is '{0}' but must be text, json or hex", key)));
    }

    /** A record as it is kept, from its bytes as ISO-8859-1. */
    String raw(String bytes) {
        return bytes;
    }

    /** A kept record as patterns see it; empty if it is not of this form at all. */
    abstract Optional<String> plain(String raw);
}
