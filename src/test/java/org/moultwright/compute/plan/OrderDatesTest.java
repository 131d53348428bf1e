package org.moultwright.compute.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.compute.forecast.InstantInterval;

class OrderDatesTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Lisbon");
    private static final LocalDate TODAY = LocalDate.of(2026, 5, 3);

    /** Any instant of ten days as likely, from noon of 10 May on: 1 in 10 before noon of 11 May. */
    private static final InstantInterval EVEN = InstantInterval.through(
            List.of(Instant.parse("2026-05-10T11:00:00Z"), Instant.parse("2026-05-20T11:00:00Z")));

    @Test
    void oneTrayIsItsOwnPercentile() {
        Earliest first = new Earliest(List.of(EVEN));
        assertThat(first.noneBefore(0.9)).isEqualTo(EVEN.p10());
        assertThat(first.chanceBy(EVEN.p50())).isEqualTo(0.5, within(1e-9));
    }

    /** 1 − 0.9² of two: each must hold √0.9. */
    @Test
    void ofTwoTraysTheEarlierIsWaitedFor() {
        Earliest first = new Earliest(List.of(EVEN, EVEN));
        assertThat(first.chanceBy(EVEN.p10())).isEqualTo(0.19, within(1e-9));
        double share = 1 - Math.sqrt(0.9);
        assertThat(Duration.between(Instant.parse("2026-05-10T11:00:00Z"), first.noneBefore(0.9))
                        .toMillis())
                .isCloseTo(Math.round(share * Duration.ofDays(10).toMillis()), within(2L));
    }

    /** 1 in 10 before 11 May at noon: there on the 10th, so ordered on the 5th. */
    @Test
    void itIsThereTheDayBefore() {
        OrderDates dates = of(Duration.ZERO, 0.9, 5);
        assertThat(dates.orderBy()).isEqualTo(LocalDate.of(2026, 5, 5));
        assertThat(dates.thereBy()).isEqualTo(LocalDate.of(2026, 5, 10));
        assertThat(dates.isLate()).isFalse();
        assertThat(dates.inTime()).isEqualTo(0.95, within(1e-6));
    }

    @Test
    void foodIsWantedAWeekLater() {
        assertThat(of(Parting.FIRST_MEAL, 0.9, 3).orderBy()).isEqualTo(LocalDate.of(2026, 5, 14));
    }

    /** Ordered on the 3rd and there on the 12th: by its end 2.5 of the ten days have gone, less an hour of summer. */
    @Test
    void whatIsLateIsOrderedTodayAndSaysHowLikelyItHelps() {
        OrderDates dates = of(Duration.ZERO, 0.9, 9);
        assertThat(dates.orderBy()).isEqualTo(TODAY);
        assertThat(dates.isLate()).isTrue();
        assertThat(dates.inTime()).isEqualTo(1 - 2.5 / 10, within(1e-6));
    }

    @Test
    void whatHasHappenedIsNeverInTime() {
        Earliest seen = new Earliest(List.of(EVEN, InstantInterval.certain(Instant.parse("2026-05-02T20:00:00Z"))));
        OrderDates dates = OrderDates.of(seen, Duration.ZERO, 0.8, 0, ZONE, TODAY);
        assertThat(dates.orderBy()).isEqualTo(TODAY);
        assertThat(dates.inTime()).isZero();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void neverLessSafeThanAskedAndNeverLaterThanForOneAlone(long seed) {
        Random random = new Random(seed);
        for (int round = 0; round < 200; round++) {
            List<InstantInterval> trays = IntStream.rangeClosed(0, random.nextInt(40))
                    .mapToObj(tray -> any(random))
                    .toList();
            Safety safety = Safety.values()[random.nextInt(3)];
            int days = random.nextInt(30);
            OrderDates dates = OrderDates.of(new Earliest(trays), Duration.ZERO, safety.chance(), days, ZONE, TODAY);
            assertThat(dates.thereBy()).isEqualTo(dates.orderBy().plusDays(days));
            assertThat(dates.orderBy()).isAfterOrEqualTo(TODAY);
            if (!dates.isLate()) {
                assertThat(dates.inTime()).isGreaterThanOrEqualTo(safety.chance() - 1e-9);
                OrderDates alone = OrderDates.of(
                        new Earliest(trays.subList(0, 1)), Duration.ZERO, safety.chance(), days, ZONE, TODAY);
                assertThat(dates.orderBy()).isBeforeOrEqualTo(alone.orderBy());
            }
        }
    }

    @Test
    void nothingTakesLongerThanAYear() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(Duration.ZERO, 0.9, 366))
                .withMessageContaining("deliveryDays");
    }

    private static OrderDates of(Duration wantedAfter, double safety, int deliveryDays) {
        return OrderDates.of(new Earliest(List.of(EVEN)), wantedAfter, safety, deliveryDays, ZONE, TODAY);
    }

    private static InstantInterval any(Random random) {
        Instant from = Instant.parse("2026-06-10T00:00:00Z").plusSeconds(random.nextInt(2_000_000));
        Instant middle = from.plusSeconds(1 + random.nextInt(500_000));
        return new InstantInterval(from, middle, middle.plusSeconds(1 + random.nextInt(500_000)));
    }
}
