package org.moultwright.device.quality;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.moultwright.device.profile.Decoded;
import org.moultwright.device.profile.FaultCause;
import org.moultwright.device.profile.Limits;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;

/**
 * Says how far each value of one probe may be trusted, by what the probe said before.
 *
 * <p>A jump of more than 5 K is suspect until the next value confirms it: a sensor short of power can tell a
 * false value that looks sound. The value a sensor holds before its first measurement is a fault if it is such
 * a jump or follows a restart, suspect while there is nothing to compare it with, and confirms nothing. The very
 * same value for longer than its profile allows is suspect: the sensor may be stuck. Common practice, no source
 * for the figures. Not safe for several threads.
 */
public final class ReadingJudge {
    private static final double JUMP_KELVIN = 5;
    private static final Decoded RESTART = new Decoded.Fault(FaultCause.RESTART);

    /** After this long the air can have changed by any amount. */
    private static final Duration COMPARABLE = Duration.ofMinutes(10);

    private final Limits limits;
    private final Stillness stillness;
    private Optional<Reading> trusted = Optional.empty();
    private double unconfirmedCelsius = Double.NaN;

    /** The instrument started anew and has told nothing but its power-on value since. */
    private boolean restarted;

    /** @param stuckAfter how long the very same value may be told before it is suspect; empty if for ever */
    public ReadingJudge(Limits limits, Optional<Duration> stuckAfter) {
        this.limits = limits;
        this.stillness = new Stillness(stuckAfter);
    }

    /** The reading that comes of what a line says. */
    public Reading judge(Decoded decoded, Instant takenAt) {
        if (!(decoded instanceof Decoded.Measured measured)) {
            restarted |= decoded.equals(RESTART);
            return new Reading(takenAt, Double.NaN, Double.NaN, Quality.FAULT);
        }
        Quality quality = quality(measured, takenAt);
        boolean isStuck = stillness.isTooLong(measured, takenAt) && quality == Quality.GOOD;
        Reading reading = reading(measured, takenAt, isStuck ? Quality.SUSPECT : quality);
        remember(reading);
        return reading;
    }

    /**
     * The reading that comes of what a line says that was held up on its way, so that nobody knows when it was
     * taken: suspect at best.
     */
    public Reading judgeHeldUp(Decoded decoded, Instant arrivedAt) {
        return decoded instanceof Decoded.Measured measured
                ? reading(measured, arrivedAt, Quality.SUSPECT)
                : judge(decoded, arrivedAt);
    }

    private static Reading reading(Decoded.Measured measured, Instant takenAt, Quality quality) {
        double humidityPercent = hasSoundHumidity(measured) ? measured.humidityPercent() : Double.NaN;
        return new Reading(takenAt, measured.temperatureCelsius(), humidityPercent, quality);
    }

    private Quality quality(Decoded.Measured measured, Instant takenAt) {
        double celsius = measured.temperatureCelsius();
        if (limits.isPowerOn(celsius)) {
            if (restarted) {
                return Quality.FAULT;
            }
            return trusted.map(last -> isNear(celsius, last.temperatureCelsius()) ? Quality.GOOD : Quality.FAULT)
                    .orElse(Quality.SUSPECT);
        }
        boolean sound = hasSoundHumidity(measured) && (isExpected(celsius, takenAt) || isConfirmed(celsius));
        return sound ? Quality.GOOD : Quality.SUSPECT;
    }

    private boolean isExpected(double celsius, Instant takenAt) {
        return trusted.filter(
                        last -> Duration.between(last.takenAt(), takenAt).abs().compareTo(COMPARABLE) <= 0)
                .map(last -> isNear(celsius, last.temperatureCelsius()))
                .orElse(true);
    }

    private boolean isConfirmed(double celsius) {
        return isNear(celsius, unconfirmedCelsius);
    }

    private void remember(Reading reading) {
        boolean powerOn = limits.isPowerOn(reading.temperatureCelsius());
        restarted &= powerOn;
        if (reading.quality() == Quality.GOOD) {
            trusted = Optional.of(reading);
        }
        unconfirmedCelsius =
                reading.quality() == Quality.SUSPECT && !powerOn ? reading.temperatureCelsius() : Double.NaN;
    }

    private static boolean hasSoundHumidity(Decoded.Measured measured) {
        double percent = measured.humidityPercent();
        return Double.isNaN(percent) || (percent >= 0 && percent <= 100);
    }

    private static boolean isNear(double one, double other) {
        return Math.abs(one - other) <= JUMP_KELVIN;
    }
}
