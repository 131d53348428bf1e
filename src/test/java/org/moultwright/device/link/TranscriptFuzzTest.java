package org.moultwright.device.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.nio.charset.StandardCharsets;
import java.util.EnumSet;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.device.DeviceException;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;

/** Whatever bytes come: no crash, no hang, no value outside what a reading may hold. */
class TranscriptFuzzTest {
    private static final int STREAMS = 600;

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
                say(desk, FuzzedBytes.of(random), random.nextBoolean());
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
            byte[] stream = FuzzedBytes.noisy(code, random);
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
