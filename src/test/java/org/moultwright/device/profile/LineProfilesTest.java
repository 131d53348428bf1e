package org.moultwright.device.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LineProfilesTest {
    private static final LineProfiles BUNDLED = LineProfiles.bundled();

    static Stream<String> codes() {
        return LineProfiles.BUNDLED.stream();
    }

    @ParameterizedTest
    @MethodSource("codes")
    void aBundledProfileReadsItsOwnTestLines(String code) {
        assertThat(LineProfiles.load(code).failures()).isEmpty();
    }

    @Test
    void theBundledOnesMayBeUsed() {
        assertThat(BUNDLED.all()).extracting(LineProfile::code).containsExactlyElementsOf(LineProfiles.BUNDLED);
    }

    @Test
    void oneThatFailsItsOwnTestMayNotBeUsed() {
        LineProfile wrong = SoundText.with("test: \"27\" -> 26").orThrow();
        assertThat(wrong.failures()).singleElement().satisfies(problem -> {
            assertThat(problem.lineNumber()).isEqualTo(SoundText.LINES.size() + 1);
            assertThat(problem.sentence()).contains("27");
        });
        assertThat(ProfileCheck.of(SoundText.lines("test: \"27\" -> 26")).profile())
                .isEmpty();
        assertThat(ProfileCheck.of(SoundText.LINES).profile()).isPresent();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "test: \"26\" -> 27",
                "test: \"26\" -> 26 70",
                "test: \"26\" -> fault",
                "test: \"26\" -> ignored",
                "test: \"26\" -> unreadable",
                "test: \"26\" -> 26 from 1",
                "test: \"x\" -> 1",
                "test: \"99\" -> fault checksum"
            })
    void aTestLineCanFail(String line) {
        assertThat(SoundText.with(line).orThrow().failures()).isNotEmpty();
    }

    @Test
    void thePortIsSetAsDeclared() {
        List<String> lines = SoundText.LINES.stream()
                .map(line -> line.startsWith("port") ? "port: 115200 7E2 DTR" : line)
                .toList();
        assertThat(ProfileReader.read(lines, Map.of()).orThrow().lineSettings())
                .isEqualTo(new LineSettings(115200, 7, LineSettings.Parity.E, 2, true));
    }

    @Test
    void settingsAreChosenWithTheCode() {
        LineProfile chosen =
                BUNDLED.find("modbus-float32 address=17 order=CDAB function=3").orElseThrow();
        assertThat(chosen.choice()).isEqualTo("modbus-float32 address=17 order=CDAB function=3");
        assertThat(chosen.poll().orElseThrow().request()).startsWith(0x11, 0x03);
        assertThat(BUNDLED.find("modbus-float32").orElseThrow().choice()).isEqualTo("modbus-float32");
        assertThat(BUNDLED.find("morse address=17")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "modbus-float32 address=0",
                "modbus-float32 address=248",
                "modbus-float32 address=warm",
                "modbus-float32 order=ACBD",
                "modbus-float32 colour=red",
                "modbus-float32 address",
                "modbus-float32 address=1 address=2",
                "plain-number address=1"
            })
    void aSettingThatMayNotBeIsRefused(String choice) {
        assertThatThrownBy(() -> BUNDLED.find(choice))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageMatching("[^\\[]{1,100}(\\[[^\\[]*\\])?");
    }
}
