package org.moultwright.compute.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.moultwright.compute.climate.RoomFixture.TRAY;
import static org.moultwright.compute.climate.RoomFixture.day;
import static org.moultwright.compute.climate.RoomFixture.fromDay;

import org.junit.jupiter.api.Test;
import org.moultwright.domain.ContainerKind;

/** What a keeper gets who reads a thermometer twice a day. */
class HandReadTest {
    private static final double MORNING = 8 / 24.0;
    private static final double HALF_A_DAY = 720;

    @Test
    void nearlyAllOfItIsGapAndSaidSo() {
        assertThat(readTwiceADay().livedUntil(40).gapFraction()).isBetween(0.97, 0.99);
    }

    /** The room falls from 27 to 23 °C over forty days; what is filled follows, as the all-time mean would not. */
    @Test
    void whatIsFilledFollowsTheReadingsNearBy() {
        WarmDays warmDays = WarmDays.of(readTwiceADay().livedUntil(40), celsius -> celsius);
        assertThat(warmDays.between(day(2), day(4)) / 2).isCloseTo(27 - 0.1 * 3, within(0.1));
        assertThat(warmDays.between(day(36), day(38)) / 2).isCloseTo(27 - 0.1 * 37, within(0.1));
    }

    @Test
    void aProbeSilentForTenHoursIsFilledAsEver() {
        RoomFixture room = new RoomFixture()
                .stay(TRAY, ContainerKind.TRAY, "BOX", fromDay(0))
                .setPoint("BOX", fromDay(0), 27)
                .probe("P", "BOX", fromDay(0), 0, 0.1)
                .readings("P", 0, 5, 15, HandReadTest::warmAtNoon)
                .readings("P", 5 + 10 / 24.0, 10, 15, HandReadTest::warmAtNoon);
        WarmDays warmDays = WarmDays.of(room.livedUntil(10), celsius -> celsius);
        assertThat(warmDays.between(day(5.1), day(5.3)))
                .as("by the same hours of the days around, not by the mean of the day")
                .isCloseTo(warmDays.between(day(4.1), day(4.3)), within(1e-3));
    }

    private static double warmAtNoon(double day) {
        return 26 - Math.cos(2 * Math.PI * day);
    }

    private static RoomFixture readTwiceADay() {
        return new RoomFixture()
                .stay(TRAY, ContainerKind.TRAY, "BOX", fromDay(0))
                .setPoint("BOX", fromDay(0), 27)
                .probe("HAND", "BOX", fromDay(0), 0, 0.5)
                .readings("HAND", MORNING, 39.9, HALF_A_DAY, day -> 27 - 0.1 * day);
    }
}
