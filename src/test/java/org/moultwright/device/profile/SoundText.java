package org.moultwright.device.profile;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The text of a small profile that is sound, to be spoilt. */
final class SoundText {
    static final List<String> LINES = List.of(
            "code: sound",
            "title: A sound one",
            "port: 9600 8N1",
            "channel: temperature C",
            "record: ^(?<temperature>\\d+)$",
            "test: \"26\" -> 26");

    private SoundText() {}

    static ProfileReader.Read with(String... more) {
        return ProfileReader.read(lines(more), Map.of());
    }

    static List<String> lines(String... more) {
        return Stream.concat(LINES.stream(), Stream.of(more)).toList();
    }
}
