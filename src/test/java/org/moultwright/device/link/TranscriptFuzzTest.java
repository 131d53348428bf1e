package org.moultwright.device.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.device.DeviceException;
import org.moultwright.device.check.Hex;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;

/** Whatever bytes come: no crash, no hang, no value outside what a reading may hold. */
class TranscriptFuzzTest {
    private static final int STREAMS = 600;
    private static final List<String> SCRAPS = List.of(
            "26.1",
            "26,1",
            "T=",
            "H=",
            "-127",
            "85.0",
            "9.9E37",
            "1e300",
            "\r\n",
            "\n",
            "\r",
            "C",
            "F",
            "%",
            ";",
            " ",
            "-",
            "\u00c2\u00b0",
            "\u00f8",
            "\u00e2\u0088\u0092",
            "nan",
            "Err.1",
            "OL",
            ",",
            ".",
            "7",
            "\0",
            "11111111111111111111111111111111",
            "T=T=T=T=T=T=T=T=T=T=",
            "                                ",
            "\u0002S ",
            "\u0002",
            "[C]",
            "[%RH]",
            "{",
            "}",
            "\"t\":",
            "\"h\":",
            ":",
            "[",
            "id=",
            "seq=4;",
            "72014B467FFF0E1057",
            "28DC6674050000B9",
            "666693",
            "A01;",
            "004711;",
            "26.1\n",
            "{\"t\":26.1}\n",
            "26,1;70\n",
            "+26.1C\r");
    private static final List<String> FRAMES = List.of(
            "01040401310222222A",
            "010404013102222ACE",
            "01040841CD999A4294666646F6",
            "018402C2C1",
            "0104000000027",
            "0104");

    static Stream<String> codes() {
        return Desk.BUNDLED.codes().stream();
    }

    @ParameterizedTest
    @MethodSource("codes")
    void anyStreamIsSurvived(String code) {
        int readings = 0;
        for (int seed = 0; seed < STREAMS; seed++) {
            Random random = new Random(seed);
            Desk desk = new Desk(code);
            for (int chunk = 0; chunk < 8; chunk++) {
                say(desk, bytes(random), random.nextBoolean());
            }
            assertSound(desk, seed);
            readings += desk.heard.size();
        }
        assertThat(readings).as("what was read").isGreaterThan(STREAMS);
    }

    /** Streams of what an instrument says with one byte in fifty changed: what still reads must be sound. */
    @ParameterizedTest
    @MethodSource("codes")
    void aNoisyWireTellsNothingUnsound(String code) {
        Set<Quality> qualities = EnumSet.noneOf(Quality.class);
        for (int seed = 0; seed < STREAMS / 4; seed++) {
            Random random = new Random(seed);
            byte[] stream = ProfileStreams.of(code);
            for (int i = 0; i < stream.length; i++) {
                stream[i] = random.nextInt(50) == 0 ? (byte) random.nextInt(256) : stream[i];
            }
            Desk desk = new Desk(code);
            say(desk, stream, seed % 2 == 0);
            assertSound(desk, seed);
            qualities.addAll(desk.qualities());
        }
        assertThat(qualities).contains(Quality.GOOD, Quality.FAULT);
    }

    private static void say(Desk desk, byte[] bytes, boolean heldUp) {
        String text = new String(bytes, StandardCharsets.ISO_8859_1);
        try {
            Desk unused = heldUp ? desk.saysLate(text) : desk.says(text);
        } catch (DeviceException e) {
            assertThat(e.reason()).isEqualTo(DeviceException.Reason.STRANGER);
        }
    }

    private static byte[] bytes(Random random) {
        if (random.nextInt(3) == 0) {
            byte[] noise = new byte[random.nextInt(300)];
            random.nextBytes(noise);
            return noise;
        }
        if (random.nextInt(4) == 0) {
            String digits = FRAMES.get(random.nextInt(FRAMES.size()));
            return Hex.bytes(digits.substring(0, digits.length() / 2 * 2));
        }
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(30); i > 0; i--) {
            text.append(SCRAPS.get(random.nextInt(SCRAPS.size())));
        }
        return text.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    private static void assertSound(Desk desk, int seed) {
        for (Reading reading : desk.readings()) {
            boolean sound =
                    isNoneOrWithin(reading.temperatureCelsius(), Reading.LOWEST_CELSIUS, Reading.HIGHEST_CELSIUS)
                            && isNoneOrWithin(reading.humidityPercent(), 0, 100);
            if (!sound) {
                fail("seed %d gives %s", seed, reading);
            }
        }
    }

    private static boolean isNoneOrWithin(double value, double lowest, double highest) {
        return Double.isNaN(value) || (value >= lowest && value <= highest);
    }
}
