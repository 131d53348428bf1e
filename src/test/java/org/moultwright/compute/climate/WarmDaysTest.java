package org.moultwright.compute.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.moultwright.compute.climate.RoomFixture.TRAY;
import static org.moultwright.compute.climate.RoomFixture.day;
import static org.moultwright.compute.climate.RoomFixture.fromDay;

import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.compute.rate.RateCurve;
import org.moultwright.domain.Quality;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.ReadingSeries;

class WarmDaysTest {
    private static final RateCurve LINEAR =
            RateCurve.of(new RateForm.Linear(11)).relativeTo(27);
    private static final RateCurve BRIERE =
            RateCurve.of(new RateForm.Briere1(11, 38)).relativeTo(27);
    private static final int[] DIVISORS_OF_AN_HOUR = {1, 2, 3, 4, 5, 6, 10, 12, 15, 20, 30};

    static LongStream seeds() {
        return LongStream.range(0, 25);
    }

    @Test
    void aDayAtTheReferenceTemperatureIsOneWarmDay() {
        WarmDays warmDays = WarmDays.of(measured(0, 10, 5, 27).livedUntil(10), BRIERE);

        assertThat(warmDays.at(day(1))).isCloseTo(1, within(1e-9));
        assertThat(warmDays.total()).isCloseTo(10, within(1e-9));
    }

    @Test
    void theProbesOffsetIsTakenOff() {
        RoomFixture room =
                new RoomFixture().probe("P", TRAY, fromDay(0), 2, 0.1).readings("P", 0, 4, 10, day -> 27 + 2);

        assertThat(WarmDays.of(room.livedUntil(4), LINEAR).total()).isCloseTo(4, within(1e-9));
    }

    @Test
    void looksUpAndFindsBackAcrossThePieces() {
        WarmDays warmDays = WarmDays.of(measured(0, 5, 7, 25).livedUntil(5), LINEAR);

        assertThat(warmDays.at(day(-3))).isZero();
        assertThat(warmDays.at(day(9))).isEqualTo(warmDays.total());
        assertThat(warmDays.at(day(2.345))).isCloseTo(2.345 * 14 / 16, within(1e-8));
        assertThat(warmDays.reached(0)).contains(day(0));
        assertThat(warmDays.reached(14.0 / 16))
                .hasValueSatisfying(
                        instant -> assertThat(instant.toEpochMilli()).isCloseTo(day(1).toEpochMilli(), within(2L)));
        assertThat(warmDays.reached(warmDays.total() + 1e-6)).isEmpty();
        assertThatThrownBy(() -> warmDays.reached(-1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("warmDays is -1.0");
    }

    @Test
    void aTimeTooColdToDevelopIsReachedAtItsStart() {
        RoomFixture room = new RoomFixture()
                .probe("P", TRAY, fromDay(0), 0, 0)
                .readings("P", 0, 3, 60, day -> day <= 1 || day >= 2 ? 27 : 5);
        WarmDays warmDays = WarmDays.of(room.livedUntil(3), LINEAR);

        double atNoon = warmDays.at(day(1.5));

        assertThat(warmDays.between(day(1.1), day(1.9))).isZero();
        assertThat(warmDays.reached(atNoon))
                .hasValueSatisfying(instant -> assertThat(instant).isBefore(day(1.1)));
    }

    @Test
    void aProbesErrorIsCommonToTheWholeTime() {
        RoomFixture room =
                new RoomFixture().probe("P", TRAY, fromDay(0), 0, 0.5).readings("P", 0, 8, 30, day -> 25);
        WarmDays warmDays = WarmDays.of(room.livedUntil(8), LINEAR);

        assertThat(warmDays.sd(day(0), day(8))).isCloseTo(8 * 0.5 / 16, within(1e-9));
        assertThat(warmDays.sd(day(2), day(4))).isCloseTo(2 * 0.5 / 16, within(1e-9));
        assertThat(warmDays.unmeasuredSd(day(0), day(8))).isZero();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void neverFallsAndAddsUpOverSpans(long seed) {
        WarmDays warmDays = WarmDays.of(randomRoom(new Random(seed)).livedUntil(12), BRIERE);
        Random random = new Random(seed + 1000);
        for (int i = 0; i < 200; i++) {
            double a = random.nextDouble() * 14 - 1;
            double b = a + random.nextDouble();
            double c = b + random.nextDouble();
            assertThat(warmDays.between(day(a), day(b))).isNotNegative();
            assertThat(warmDays.between(day(a), day(b)) + warmDays.between(day(b), day(c)))
                    .isCloseTo(warmDays.between(day(a), day(c)), within(1e-9));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void findsBackEveryInstant(long seed) {
        WarmDays warmDays = WarmDays.of(randomRoom(new Random(seed)).livedUntil(12), LINEAR);
        Random random = new Random(seed + 2000);
        for (int i = 0; i < 50; i++) {
            double lived = warmDays.total() * random.nextDouble();
            assertThat(warmDays.at(warmDays.reached(lived).orElseThrow())).isCloseTo(lived, within(1e-7));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void doesNotCareHowDenselyAStraightRecordWasRead(long seed) {
        Random random = new Random(seed);
        double start = 15 + 10 * random.nextDouble();
        double slope = 3 * random.nextDouble() - 1.5;
        double sparse = warmDaysOfSlope(start, slope, 120);
        double dense = warmDaysOfSlope(start, slope, DIVISORS_OF_AN_HOUR[random.nextInt(DIVISORS_OF_AN_HOUR.length)]);

        assertThat(dense).as("seed %d", seed).isCloseTo(sparse, within(1e-9));
    }

    private static double warmDaysOfSlope(double start, double slopePerDay, double everyMinutes) {
        RoomFixture room = new RoomFixture()
                .probe("P", TRAY, fromDay(0), 0, 0)
                .readings("P", 0, 5, everyMinutes, day -> start + slopePerDay * day);
        return WarmDays.of(room.livedUntil(5), BRIERE).total();
    }

    private static RoomFixture measured(double fromDay, double toDay, double everyMinutes, double celsius) {
        return new RoomFixture()
                .probe("P", TRAY, fromDay(0), 0, 0.1)
                .readings("P", fromDay, toDay, everyMinutes, day -> celsius);
    }

    /** Readings at random instants, some of them nonsense, with gaps of any length. */
    private static RoomFixture randomRoom(Random random) {
        ReadingSeries.Builder builder = new ReadingSeries.Builder();
        double at = 0;
        while (at < 12) {
            at += random.nextInt(20) == 0 ? random.nextDouble() * 2 : random.nextDouble() / 12;
            double celsius = random.nextInt(30) == 0 ? -127 : 26 + 2 * random.nextGaussian();
            builder.add(day(at).toEpochMilli(), celsius, Double.NaN, Quality.GOOD);
        }
        return new RoomFixture()
                .probe("P", TRAY, fromDay(0), 0, 0.1)
                .readings("P", builder.build())
                .setPoint(TRAY, fromDay(0), 27);
    }
}
