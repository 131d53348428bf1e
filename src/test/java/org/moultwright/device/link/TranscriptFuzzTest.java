package org.moultwright.device.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.device.profile.LineProfile;
import org.moultwright.device.profile.LineProfiles;
import org.moultwright.domain.Reading;
import org.moultwright.workflow.ReadingLog.Logged;

/** Whatever bytes come: no crash, no hang, no value outside what a reading may hold. */
class TranscriptFuzzTest {
    private static final int STREAMS = 2_000;
    private static final Instant START = Instant.parse("2026-03-01T20:00:00Z");
    private static final List<String> SCRAPS = List.of(
            "26.1",
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
            "                                ");

    @ParameterizedTest
    @ValueSource(strings = {"plain-number", "key-value"})
    void anyStreamIsSurvived(String code) {
        LineProfile profile = LineProfiles.bundled().find(code).orElseThrow();
        long readings = 0;
        for (int seed = 0; seed < STREAMS; seed++) {
            readings += feed(new Transcript(profile), new Random(seed), seed);
        }
        assertThat(readings).as("streams that hold something to read").isGreaterThan(STREAMS);
    }

    private static int feed(Transcript transcript, Random random, int seed) {
        int readings = 0;
        for (int chunk = 0; chunk < 8; chunk++) {
            byte[] bytes = bytes(random);
            for (Logged logged : transcript.take(bytes, bytes.length, START.plusSeconds(chunk), random.nextBoolean())) {
                assertSound(logged.reading(), seed);
                readings++;
            }
        }
        return readings;
    }

    private static byte[] bytes(Random random) {
        if (random.nextInt(3) == 0) {
            byte[] noise = new byte[random.nextInt(300)];
            random.nextBytes(noise);
            return noise;
        }
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(30); i > 0; i--) {
            text.append(SCRAPS.get(random.nextInt(SCRAPS.size())));
        }
        return text.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    private static void assertSound(Reading reading, int seed) {
        boolean sound = isNoneOrWithin(reading.temperatureCelsius(), Reading.LOWEST_CELSIUS, Reading.HIGHEST_CELSIUS)
                && isNoneOrWithin(reading.humidityPercent(), 0, 100);
        if (!sound) {
            fail("seed %d gives %s", seed, reading);
        }
    }

    private static boolean isNoneOrWithin(double value, double lowest, double highest) {
        return Double.isNaN(value) || (value >= lowest && value <= highest);
    }
}
