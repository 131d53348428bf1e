package org.moultwright.store.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.Random;
import java.util.SplittableRandom;
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
    void anHourOfNoiseAtJitteredTimesTakesLittleMoreThanItsNoise() {
        Random random = new Random(7);
        ReadingSeries.Builder series = new ReadingSeries.Builder();
        for (int i = 0; i < 360; i++) {
            double temperature = Math.round(2700 + 40 * Math.sin(i / 57.0) + 2 * random.nextGaussian()) / 100.0;
            double humidity = Math.round(715 + 2 * random.nextGaussian()) / 10.0;
            series.add(i * 10_000L + Math.round(4 * random.nextGaussian()), temperature, humidity, Quality.GOOD);
        }
        // Noise of so many steps has an entropy of log2(steps · √(2πe)) bits: 3.0, 3.0 and 4.0 here.
        assertThat(PackedSeries.pack(series.build()).length * 8 / 360.0).isBetween(10.0, 12.5);
    }

    @Test
    void coarseStepsTakeHardlyAnything() {
        ReadingSeries.Builder series = new ReadingSeries.Builder();
        for (int i = 0; i < 360; i++) {
            double temperature = Math.round(16 * (27 + 0.4 * Math.sin(i / 57.0))) / 16.0;
            series.add(i * 10_000L, temperature, Double.NaN, Quality.GOOD);
        }
        assertThat(PackedSeries.pack(series.build()).length).isLessThan(70);
    }

    @Test
    void temperaturesAloneComeBackTheSame() {
        ReadingSeries.Builder whole = new ReadingSeries.Builder();
        ReadingSeries.Builder withoutHumidity = new ReadingSeries.Builder();
        for (int i = 0; i < 100; i++) {
            whole.add(i * 10_000L, 20 + i / 100.0, 60 + i / 10.0, Quality.GOOD);
            withoutHumidity.add(i * 10_000L, 20 + i / 100.0, Double.NaN, Quality.GOOD);
        }
        ReadingSeries.Builder unpacked = new ReadingSeries.Builder();
        PackedSeries.unpackTemperaturesInto(unpacked, PackedSeries.pack(whole.build()));
        assertThat(unpacked.build()).isEqualTo(withoutHumidity.build());
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
            assertThatIllegalArgumentException().as("byte %d", position).isThrownBy(() -> unpacked(damaged));
        }
        assertThatIllegalArgumentException().isThrownBy(() -> unpacked(Arrays.copyOf(packed, packed.length - 5)));
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

    private static ReadingSeries unpacked(byte[] packed) {
        ReadingSeries.Builder builder = new ReadingSeries.Builder();
        PackedSeries.unpackInto(builder, packed);
        return builder.build();
    }
}
