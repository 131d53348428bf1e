package org.moultwright.compute.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.moultwright.compute.climate.RoomFixture.LAID;
import static org.moultwright.compute.climate.RoomFixture.TRAY;
import static org.moultwright.compute.climate.RoomFixture.day;
import static org.moultwright.compute.climate.RoomFixture.fromDay;
import static org.moultwright.compute.climate.RoomFixture.span;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.climate.TemperatureSource.Habit;
import org.moultwright.compute.climate.TemperatureSource.Probe;
import org.moultwright.compute.climate.TemperatureSource.Reference;
import org.moultwright.compute.climate.TemperatureSource.SetPointAlone;
import org.moultwright.compute.rate.RateCurve;
import org.moultwright.domain.Account;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;

class LivedTemperatureTest {
    /** Its integral over days is the sum of degree-days, so that the mean temperature can be read off it. */
    private static final RateCurve DEGREES = celsius -> celsius;

    @Test
    void aRecordOfNothingGivesTheReferenceTemperature() {
        LivedTemperature lived = new RoomFixture().livedUntil(10);

        assertThat(sources(lived)).containsExactly(new Reference());
        assertThat(lived.gapFraction()).isEqualTo(1);
        assertThat(mean(lived, 0, 10)).isCloseTo(27, within(1e-9));
        assertThat(lived.residualDays(21)).isEmpty();
    }

    @Test
    void withoutALayingAgeCountsFromTheFirstCheck() {
        RoomFixture room = new RoomFixture().withoutLaying().check(5).check(3);

        assertThat(room.livedUntil(10).from()).isEqualTo(day(3));
        assertThat(AgeOrigin.of(room.record())).contains(new AgeOrigin(day(3), false));
    }

    @Test
    void withoutAnyDateNoTimeHasPassed() {
        LivedTemperature lived = new RoomFixture().withoutLaying().livedUntil(10);

        assertThat(lived.spans()).isEmpty();
        assertThat(lived.gapFraction()).isZero();
        assertThat(WarmDays.of(lived, DEGREES).at(day(20))).isZero();
    }

    @Test
    void beforeTheLayingNoTimeHasPassed() {
        LivedTemperature lived = new RoomFixture().check(-4).livedUntil(-2);

        assertThat(lived.until()).isEqualTo(LAID);
        assertThat(lived.spans()).isEmpty();
    }

    @Test
    void theInnermostProbeCounts() {
        LivedTemperature lived = nested().probe("inner", "BOX", span(2, 4), 0, 0.1)
                .probe("outer", "INC", fromDay(0), 0, 0.2)
                .readings("inner", 2, 4, 15, day -> 29)
                .readings("outer", 0, 6, 15, day -> 25)
                .livedUntil(6);

        assertThat(sources(lived))
                .containsExactly(
                        new Probe("outer", "INC", false),
                        new Probe("inner", "BOX", false),
                        new Probe("outer", "INC", false));
        assertThat(mean(lived, 0, 2)).isCloseTo(25, within(1e-9));
        assertThat(mean(lived, 2, 3.9)).isCloseTo(29, within(1e-9));
    }

    @Test
    void aSilentProbeIsReplacedByTheNextOneOut() {
        LivedTemperature lived = nested().probe("inner", "BOX", fromDay(0), 0, 0.1)
                .probe("outer", "INC", fromDay(0), 0, 0.2)
                .readings("inner", 0, 2, 15, day -> 29)
                .readings("inner", 3, 6, 15, day -> 29)
                .readings("outer", 0, 6, 15, day -> 25)
                .livedUntil(6);

        assertThat(mean(lived, 2, 3)).isCloseTo(25, within(1e-9));
        assertThat(lived.gapFraction()).isZero();
    }

    @Test
    void theTemperatureFollowsTheTrayFromBoxToBox() {
        LivedTemperature lived = new RoomFixture()
                .stay(TRAY, ContainerKind.TRAY, "B1", span(0, 2.01))
                .stay(TRAY, ContainerKind.TRAY, "B2", fromDay(2.01))
                .probe("P1", "B1", fromDay(0), 0, 0.1)
                .probe("P2", "B2", fromDay(0), 0, 0.1)
                .readings("P1", 0, 5, 15, day -> 24)
                .readings("P2", 0, 5, 15, day -> 28)
                .livedUntil(4);

        assertThat(mean(lived, 0, 2.01)).isCloseTo(24, within(1e-9));
        assertThat(mean(lived, 2.01, 4)).isCloseTo(28, within(1e-9));
    }

    @Test
    void aGapIsFilledWithTheHabitOfTheHour() {
        LivedTemperature lived = nested().setPoint("INC", fromDay(0), 27)
                .probe("P", "BOX", fromDay(0), 0, 0.1)
                .readings("P", 0, 3, 5, LivedTemperatureTest::warmAfternoons)
                .readings("P", 3.9, 8, 5, LivedTemperatureTest::warmAfternoons)
                .livedUntil(8);

        assertThat(sources(lived))
                .containsExactly(new Probe("P", "BOX", false), new Habit("INC"), new Probe("P", "BOX", false));
        assertThat(mean(lived, 3.1, 3.4)).isCloseTo(26, within(0.01));
        assertThat(mean(lived, 3.55, 3.7)).isCloseTo(28, within(0.01));
        assertThat(lived.gapFraction()).isCloseTo(0.9 / 8, within(1e-6));
    }

    @Test
    void aGapFollowsTheSetPointOfItsOwnTime() {
        LivedTemperature lived = nested().setPoint("INC", span(0, 3.5), 27)
                .setPoint("INC", fromDay(3.5), 28.5)
                .probe("P", "INC", fromDay(0), 0, 0.1)
                .readings("P", 0, 3, 5, day -> 25.7)
                .livedUntil(5);

        assertThat(mean(lived, 3, 3.5)).isCloseTo(25.7, within(1e-6));
        assertThat(mean(lived, 3.5, 5)).isCloseTo(27.2, within(1e-6));
        assertThat(lived.nominalCelsius()).isEqualTo(28.5);
    }

    @Test
    void threeHoursAreBridgedAndMoreAreAGap() {
        RoomFixture room = nested().setPoint("INC", fromDay(0), 20).probe("P", "INC", fromDay(0), 0, 0);
        ReadingSeries series = new ReadingSeries.Builder()
                .add(day(0).toEpochMilli(), 24, Double.NaN, Quality.GOOD)
                .add(day(3.0 / 24).toEpochMilli(), 26, Double.NaN, Quality.GOOD)
                .add(day(6.1 / 24).toEpochMilli(), 26, Double.NaN, Quality.GOOD)
                .add(day(6.2 / 24).toEpochMilli(), 26, Double.NaN, Quality.GOOD)
                .build();
        LivedTemperature lived = room.readings("P", series).livedUntil(6.2 / 24);

        assertThat(mean(lived, 0, 3.0 / 24)).isCloseTo(25, within(1e-9));
        assertThat(lived.gapFraction()).isCloseTo(3.1 / 6.2, within(1e-6));
    }

    @Test
    void onlyGoodAndPossibleReadingsOfTheTimeCount() {
        ReadingSeries series = new ReadingSeries.Builder()
                .add(day(0.3).toEpochMilli(), 25, Double.NaN, Quality.GOOD)
                .add(day(0.1).toEpochMilli(), 85, Double.NaN, Quality.SUSPECT)
                .add(day(0.2).toEpochMilli(), -127, Double.NaN, Quality.GOOD)
                .add(day(0.25).toEpochMilli(), Double.NaN, Double.NaN, Quality.FAULT)
                .add(day(0.2).toEpochMilli(), 25, Double.NaN, Quality.GOOD)
                .add(day(0.31).toEpochMilli(), 60, Double.NaN, Quality.GOOD)
                .build();
        LivedTemperature lived = new RoomFixture()
                .probe("P", TRAY, fromDay(0), 0, 0)
                .readings("P", series)
                .livedUntil(0.3);

        assertThat(mean(lived, 0, 0.3)).isCloseTo(25, within(1e-9));
    }

    @Test
    void aFewReadingsByHandCorrectTheSetPoint() {
        ReadingSeries.Builder byHand = new ReadingSeries.Builder();
        for (int day = 0; day < 8; day++) {
            byHand.add(day(day + 0.33).toEpochMilli(), 25.7, Double.NaN, Quality.GOOD);
            byHand.add(day(day + 0.83).toEpochMilli(), 25.7, Double.NaN, Quality.GOOD);
        }
        LivedTemperature lived = nested().setPoint("INC", fromDay(0), 27)
                .probe("P", "INC", fromDay(0), 0, 0.2)
                .readings("P", byHand.build())
                .livedUntil(8);

        assertThat(mean(lived, 0, 8)).isCloseTo(25.7, within(1e-6));
        assertThat(lived.gapFraction()).isGreaterThan(0.95);
    }

    @Test
    void withTheMotherTheSacsOwnPlaceCounts() {
        LivedTemperature lived = new RoomFixture()
                .stay("sac", ContainerKind.BOX, "SHELF", span(0, 5))
                .stay(TRAY, ContainerKind.TRAY, "INC", fromDay(5))
                .setPoint("SHELF", fromDay(0), 24)
                .setPoint("INC", fromDay(0), 27)
                .probe("P", "INC", fromDay(0), 0, 0.1)
                .readings("P", 0, 8, 15, day -> 26)
                .livedUntil(8);

        assertThat(sources(lived)).containsExactly(new SetPointAlone("SHELF"), new Probe("P", "INC", false));
        assertThat(mean(lived, 0, 5)).isCloseTo(24, within(1e-9));
        assertThat(lived.spans().get(0).sdCelsius()).isEqualTo(1.0);
    }

    @Test
    void beforeItsTrayAnAnimalWasInTheTrayItCameFrom() {
        LivedTemperature lived = new RoomFixture()
                .stay("T0", ContainerKind.TRAY, "WARM", fromDay(0))
                .stay(TRAY, ContainerKind.TRAY, "COOL", fromDay(5))
                .moved(5, Account.SAC, "T0", 20)
                .moved(5, Account.tray("T0"), TRAY, 10)
                .setPoint("WARM", fromDay(0), 28)
                .setPoint("COOL", fromDay(0), 25)
                .livedUntil(8);

        assertThat(sources(lived)).containsExactly(new SetPointAlone("WARM"), new SetPointAlone("COOL"));
        assertThat(mean(lived, 0, 5)).isCloseTo(28, within(1e-9));
    }

    @Test
    void anUnwrittenPlaceIsAssumedAndLessSure() {
        LivedTemperature lived = new RoomFixture()
                .stay(TRAY, ContainerKind.TRAY, "INC", fromDay(5))
                .probe("P", "INC", fromDay(0), 0, 0.1)
                .readings("P", 0, 8, 15, day -> 26)
                .livedUntil(8);

        assertThat(sources(lived)).containsExactly(new Probe("P", "INC", true), new Probe("P", "INC", false));
        assertThat(lived.spans().get(0).sdCelsius()).isGreaterThan(1.0);
    }

    @Test
    void containersInsideEachOtherEndTheWalkOutwards() {
        LivedTemperature lived = new RoomFixture()
                .stay(TRAY, ContainerKind.TRAY, "A", fromDay(0))
                .stay("A", ContainerKind.BOX, "B", fromDay(0))
                .stay("B", ContainerKind.BOX, "A", fromDay(0))
                .setPoint("B", fromDay(0), 23)
                .livedUntil(2);

        assertThat(sources(lived)).containsExactly(new SetPointAlone("B"));
    }

    @Test
    void wholeDaysOfResidualsShowHowTheSetPointWasKept() {
        Random random = new Random(7);
        LivedTemperature lived = nested().setPoint("INC", fromDay(0), 27)
                .probe("P", "INC", fromDay(0), 0, 0.1)
                .readings("P", 0, 9.5, 5, day -> 25.7 + 0.1 * random.nextGaussian())
                .livedUntil(9.5);

        List<double[]> days = lived.residualDays(7);

        assertThat(days).hasSize(7);
        assertThat(days).allSatisfy(day -> {
            assertThat(day).hasSize(96);
            assertThat(Arrays.stream(day).boxed())
                    .allSatisfy(residual -> assertThat(residual).isCloseTo(-1.3, within(0.4)));
        });
    }

    private static double warmAfternoons(double day) {
        return day - Math.floor(day) < 0.5 ? 26 : 28;
    }

    private static RoomFixture nested() {
        return new RoomFixture()
                .stay("ROOM", ContainerKind.ROOM, "", fromDay(-30))
                .stay("INC", ContainerKind.INCUBATOR, "ROOM", fromDay(-30))
                .stay("BOX", ContainerKind.BOX, "INC", fromDay(-30))
                .stay(TRAY, ContainerKind.TRAY, "BOX", fromDay(0));
    }

    private static double mean(LivedTemperature lived, double fromDay, double toDay) {
        return WarmDays.of(lived, DEGREES).between(day(fromDay), day(toDay)) / (toDay - fromDay);
    }

    private static List<TemperatureSource> sources(LivedTemperature lived) {
        return lived.spans().stream().map(LivedSpan::source).toList();
    }
}
