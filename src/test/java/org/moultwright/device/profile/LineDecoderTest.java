package org.moultwright.device.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class LineDecoderTest {
    private static final Duration LONGEST = Duration.ofSeconds(5);
    private static final LineProfiles BUNDLED = LineProfiles.bundled();

    static Stream<String> codes() {
        return BUNDLED.codes().stream();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "^(?<temperature>(?:\\d+)+)+x$",
                "^(?<temperature>(?:\\d|\\d\\d)*)x$",
                "(?<temperature>.*.*.*.*.*.*.*.*)x",
                "^(?<temperature>(?:(?:(?:(?:(?:(?:(?:(?:1|a)|b)|c)|d)|e)|f)|g)|h)*)x$",
                "^(?=(?:.*?1)*(?:.*?1)*(?:.*?1)*x)(?<temperature>\\d)"
            })
    void noHostileLineHangsAPattern(String pattern) {
        LineProfile runaway = SoundText.with("record: " + pattern).orThrow();
        Told told = assertTimeoutPreemptively(LONGEST, () -> runaway.decode("1".repeat(600) + "y"));
        assertThat(told.decoded()).isEqualTo(new Decoded.Unreadable());
    }

    /** Lines made to send the bundled patterns back and forth. */
    @ParameterizedTest
    @MethodSource("codes")
    void noHostileLineHangsABundledProfile(String code) {
        LineProfile profile = BUNDLED.find(code).orElseThrow();
        for (String piece :
                List.of("T=", "1", "1,", ",", ";", " ", "T=1 H=", "{\"t\":", "AA ", "-H-", "[", "S 1,", "\n")) {
            String hostile = piece.repeat(600 / piece.length());
            assertTimeoutPreemptively(LONGEST, () -> {
                for (int i = 0; i < 20; i++) {
                    profile.decode(hostile);
                    profile.decode("{\"t\":\"" + hostile + "\"}");
                }
            });
        }
    }

    @Test
    void theFirstRecordThatFitsIsTaken() {
        LineProfile profile = SoundText.with("record: ^T(?<temperature>\\d+)$", "record: (?<temperature>\\d)")
                .orThrow();
        assertThat(profile.decode("T27").decoded()).isEqualTo(new Decoded.Measured(27, Double.NaN));
        assertThat(profile.decode("x27").decoded()).isEqualTo(new Decoded.Measured(2, Double.NaN));
    }

    @Test
    void aRecordWithAWrongCheckIsNobodys() {
        LineProfile profile = BUNDLED.find("semicolon-record").orElseThrow();
        assertThat(profile.decode("A02;25.7;C;004711;1E"))
                .isEqualTo(new Told(new Decoded.Fault(FaultCause.CHECKSUM), Origin.NONE));
    }

    @Test
    void whoSaysAFaultIsTold() {
        LineProfile profile = BUNDLED.find("one-wire-scratchpad").orElseThrow();
        assertThat(profile.decode("28DC6674050000B9 50054B467FFF0C101C"))
                .isEqualTo(new Told(new Decoded.Fault(FaultCause.POWER_ON), new Origin("28DC6674050000B9", "", "")));
    }

    @Test
    void theNumberOfARecordIsTold() {
        assertThat(BUNDLED.find("key-value")
                        .orElseThrow()
                        .decode("id=a1 seq=17 T=25.7")
                        .origin())
                .isEqualTo(new Origin("", "A1", "17"));
    }
}
