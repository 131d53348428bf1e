package org.moultwright.benchmark;

import java.time.Instant;
import java.util.Arrays;
import java.util.Random;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;

/**
 * What probes in boxes say: a day's swing, a heater's cycle and noise, at times that miss their beat by some
 * milliseconds; now and then a fault or an hour of silence. Every other probe has steps of 0.0625 °C, the rest of
 * 0.01; humidity in steps of 0.1 %.
 */
final class InventedAir {
    private static final int NOISE = 1 << 16;
    private static final double SECONDS_A_DAY = 86_400;
    private static final double HEATER_SECONDS = 1_140;
    private static final double NOISE_CELSIUS = 0.02;
    private static final double NOISE_PERCENT = 0.15;
    private static final int READINGS_A_FAULT = 20_011;
    private static final int READINGS_A_SILENCE = 400_009;

    private final double[] noise = new double[NOISE];
    private final double[] waves = new double[NOISE];
    private final Instant start;
    private final long millisApart;
    private final double jitterMillis;

    /** @param jitterMillis standard deviation of how far a reading misses its beat */
    InventedAir(Instant start, long millisApart, double jitterMillis) {
        Random random = new Random(20260401);
        Arrays.setAll(noise, i -> random.nextGaussian());
        this.start = start;
        this.millisApart = millisApart;
        this.jitterMillis = jitterMillis;
        Arrays.setAll(waves, i -> Math.sin(2 * Math.PI * i / NOISE));
    }

    Reading reading(int probe, long number) {
        long silentMillis = number / READINGS_A_SILENCE * 3_600_000;
        long millis = number * millisApart + silentMillis + Math.round(jitterMillis * noise(number, 7 + probe));
        double seconds = millis / 1000.0;
        double celsius = 27
                + probe * 0.3
                + 0.5 * wave(seconds / SECONDS_A_DAY)
                + 0.15 * wave(seconds / HEATER_SECONDS)
                + NOISE_CELSIUS * noise(number, 31 + probe);
        double percent = 72 + 4 * wave(seconds / SECONDS_A_DAY + 0.3) + NOISE_PERCENT * noise(number, 101 + probe);
        boolean isFault = number % READINGS_A_FAULT == READINGS_A_FAULT - 1;
        return new Reading(
                start.plusMillis(millis),
                isFault ? 85 : probe % 2 == 0 ? Math.round(celsius * 16) / 16.0 : Math.round(celsius * 100) / 100.0,
                Math.round(percent * 10) / 10.0,
                isFault ? Quality.FAULT : Quality.GOOD);
    }

    /** As its line came over the wire. */
    static String rawLine(Reading reading) {
        return "T=" + reading.temperatureCelsius() + " H=" + reading.humidityPercent();
    }

    private double wave(double turns) {
        return waves[(int) (turns * NOISE) & (NOISE - 1)];
    }

    private double noise(long number, int salt) {
        long mixed = (number + salt * 0x9E3779B97F4A7C15L) * 0xBF58476D1CE4E5B9L;
        return noise[(int) ((mixed ^ (mixed >>> 29)) & (NOISE - 1))];
    }
}
