package org.moultwright.compute.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.stage.Chance;

class InstantIntervalTest {
    private static final Instant DAY0 = Instant.parse("2026-05-01T00:00:00Z");

    @Test
    void uniformDrawsGiveEvenChances() {
        InstantInterval interval = InstantInterval.of(DoubleStream.iterate(0, day -> day + 0.01)
                .limit(1001)
                .map(InstantIntervalTest::millis)
                .toArray());
        assertThat(interval.p10()).isEqualTo(day(1));
        assertThat(interval.chanceBy(day(2.5))).isCloseTo(0.25, within(1e-6));
        assertThat(interval.chanceBetween(day(2), day(7))).isCloseTo(0.5, within(1e-6));
        assertThat(interval.chanceBy(day(-1))).isZero();
        assertThat(interval.chanceBy(day(11))).isEqualTo(1);
    }

    @Test
    void aCertainForecastScoresItsError() {
        InstantInterval certain = InstantInterval.of(new double[] {millis(3), millis(3)});
        assertThat(certain.crpsDays(day(5))).isCloseTo(2, within(1e-9));
    }

    /** Gneiting &amp; Raftery 2007, eq. 21: for N(0, σ²) at its mean the score is σ(√2 − 1)/√π. */
    @Test
    void aNormalForecastScoresAsPublished() {
        Chance chance = new Chance(5);
        InstantInterval normal = InstantInterval.of(DoubleStream.generate(() -> millis(2 * chance.normal()))
                .limit(200_000)
                .toArray());
        assertThat(normal.crpsDays(day(0))).isCloseTo(2 * (Math.sqrt(2) - 1) / Math.sqrt(Math.PI), within(0.01));
    }

    private static double millis(double days) {
        return day(days).toEpochMilli();
    }

    private static Instant day(double days) {
        return DAY0.plusMillis(Math.round(days * Duration.ofDays(1).toMillis()));
    }
}
