package org.moultwright.store.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;

class PackedSeriesTest {
    private static final double[] AWKWARD = {
        Double.NaN, -0.0, 0.1 + 0.2, Math.PI, 1e300, -1e-300, Double.POSITIVE_INFINITY, 4503599627370497.0, 21.125
    };

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void anyValuesComeBackBitByBit(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        ReadingSeries.Builder series = new ReadingSeries.Builder();
        long time = random.nextLong(-1_000_000_000_000L, 2_000_000_000_000L);
        boolean awkward = seed % 2 == 0;
        for (int i = random.nextInt(700); i > 0; i--) {
            time += 1 + random.nextInt(20_000);
            series.add(time, value(random, awkward), value(random, awkward), quality(random));
        }
        ReadingSeries expected = series.build();
        assertThat(unpacked(PackedSeries.pack(expected))).as("seed %d", seed).isEqualTo(expected);
    }

    @Test
    void anHourAtTenSecondsTakesAboutABytePerReading() {
        ReadingSeries.Builder series = new ReadingSeries.Builder();
        for (int i = 0; i < 360; i++) {
            double temperature = Math.round(2700 + 40 * Math.sin(i / 57.0)) / 100.0;
            series.add(i * 10_000L, temperature, 71.5, Quality.GOOD);
        }
        assertThat(PackedSeries.pack(series.build()).length).isLessThan(360);
    }

    @Test
    void damagedBytesAreRefused() {
        ReadingSeries.Builder series = new ReadingSeries.Builder();
        for (int i = 0; i < 300; i++) {
            series.add(i * 10_000L, 20 + i / 100.0, Double.NaN, Quality.GOOD);
        }
        ReadingSeries whole = series.build();
        byte[] packed = PackedSeries.pack(whole);
        for (int position = 0; position < packed.length; position++) {
            byte[] damaged = packed.clone();
            damaged[position] ^= 0x10;
            assertThat(refusedOrWhole(damaged, whole)).as("byte %d", position).isTrue();
        }
        assertThatIllegalArgumentException().isThrownBy(() -> unpacked(Arrays.copyOf(packed, packed.length - 5)));
    }

    @Test
    void rawLinesComeBackAsTheyWere() {
        TreeMap<Long, String> lines = new TreeMap<>();
        lines.put(-5L, "t=26.5;h=71");
        lines.put(7L, "°\u0000 \t\"");
        lines.put(1_700_000_000_000L, "");
        assertThat(PackedLines.unpack(PackedLines.pack(lines))).isEqualTo(lines);
    }

    private static double value(SplittableRandom random, boolean awkward) {
        return awkward && random.nextInt(3) == 0
                ? AWKWARD[random.nextInt(AWKWARD.length)]
                : random.nextInt(-4000, 8500) / 100.0;
    }

    /** Good ones must be possible values; the packing itself does not care. */
    private static Quality quality(SplittableRandom random) {
        return random.nextBoolean() ? Quality.SUSPECT : Quality.FAULT;
    }

    /** The last bits before the checksum mean nothing and may be any. */
    private static boolean refusedOrWhole(byte[] damaged, ReadingSeries whole) {
        try {
            return unpacked(damaged).equals(whole);
        } catch (IllegalArgumentException e) {
            return true;
        }
    }

    private static ReadingSeries unpacked(byte[] packed) {
        ReadingSeries.Builder builder = new ReadingSeries.Builder();
        PackedSeries.unpackInto(builder, packed);
        return builder.build();
    }
}
