package org.moultwright.device.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineProfilesTest {
    private static final List<String> SOUND = List.of(
            "code: sound",
            "title: A sound one",
            "port: 9600 8N1",
            "unit: C",
            "limits: -40 85",
            "record: ^(?<temperature>\\d+)$",
            "test: \"26\" -> 26");

    @ParameterizedTest
    @ValueSource(strings = {"plain-number", "key-value"})
    void aBundledProfileReadsItsOwnTestLines(String code) {
        assertThat(LineProfiles.load(code).failures()).isEmpty();
    }

    @Test
    void theBundledOnesMayBeUsed() {
        assertThat(LineProfiles.bundled().codes()).containsExactly("plain-number", "key-value");
    }

    @Test
    void oneThatFailsItsOwnTestMayNotBeUsed() {
        LineProfile wrong = ProfileReader.read(with("test: \"27\" -> 26"));
        LineProfiles profiles = new LineProfiles(List.of(ProfileReader.read(SOUND), wrong));
        assertThat(wrong.failures()).singleElement().asString().contains("27");
        assertThat(profiles.codes()).containsExactly("sound");
    }

    @ParameterizedTest
    @ValueSource(strings = {"test: \"26\" -> 27", "test: \"26\" -> 26 70", "test: \"26\" -> fault", "test: \"x\" -> 1"})
    void aTestLineCanFail(String line) {
        assertThat(ProfileReader.read(with(line)).failures()).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "colour: red",
                "code: twice",
                "test: 26 -> 26",
                "let: Number = \\d",
                "record: (?<temperature>\\d+",
                "power-on: warm"
            })
    void aFileThatDeclaresNoProfileIsRefused(String line) {
        assertThatThrownBy(() -> ProfileReader.read(with(line))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aProfileWithoutTestsIsRefused() {
        assertThatThrownBy(() -> ProfileReader.read(SOUND.subList(0, SOUND.size() - 1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("test lines");
    }

    @Test
    void thePortIsSetAsDeclared() {
        List<String> lines = SOUND.stream()
                .map(line -> line.startsWith("port") ? "port: 115200 7E2 DTR" : line)
                .toList();
        assertThat(ProfileReader.read(lines).lineSettings())
                .isEqualTo(new LineSettings(115200, 7, LineSettings.Parity.E, 2, true));
    }

    @Test
    void noPatternRunsAway() {
        LineProfile runaway = ProfileReader.read(with("record: ^(?<temperature>(?:\\d+)+)+x$"));
        assertThat(assertTimeout(Duration.ofSeconds(5), () -> runaway.decode("1".repeat(200) + "y")))
                .isEqualTo(new Decoded.Unreadable());
    }

    private static List<String> with(String line) {
        return Stream.concat(SOUND.stream(), Stream.of(line)).toList();
    }
}
