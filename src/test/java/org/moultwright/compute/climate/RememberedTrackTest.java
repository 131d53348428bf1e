package org.moultwright.compute.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.moultwright.compute.climate.RoomFixture.LAID;
import static org.moultwright.compute.climate.RoomFixture.TRAY;
import static org.moultwright.compute.climate.RoomFixture.day;
import static org.moultwright.compute.climate.RoomFixture.fromDay;
import static org.moultwright.compute.climate.RoomFixture.span;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.climate.TemperatureSource.BetweenExtremes;
import org.moultwright.compute.climate.TemperatureSource.Habit;
import org.moultwright.compute.climate.TemperatureSource.Probe;
import org.moultwright.compute.rate.DegreeDays;
import org.moultwright.compute.rate.RateCurve;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.Extremes;

/** Days of which only the lowest and the highest are known. */
class RememberedTrackTest {
    private static final RateCurve CUT_OFF = celsius -> Math.min(Math.max(celsius - 12, 0), 33 - 12);

    @Test
    void aDayLivesTheSingleSineDegreeDays() {
        LivedTemperature lived =
                box().extremes("BOX", 0, 1, 13, 40).extremes("BOX", 1, 2, 7, 14).livedUntil(2);

        assertThat(lived.spans()).extracting(LivedSpan::source).containsOnly(new BetweenExtremes("BOX", false));
        assertThat(lived.gapFraction()).isZero();
        WarmDays warmDays = WarmDays.of(lived, CUT_OFF);
        assertThat(warmDays.at(day(1))).isCloseTo(DegreeDays.singleSine(13, 40, 12, 33), within(1e-3));
        assertThat(warmDays.between(day(1), day(2))).isCloseTo(DegreeDays.singleSine(7, 14, 12, 33), within(1e-3));
        assertThat(warmDays.between(day(0), day(0.25)))
                .as("nobody knows at what hour it was warm")
                .isCloseTo(warmDays.at(day(1)) / 4, within(1e-9));
        assertThat(warmDays.reached(warmDays.at(day(0.5))).orElseThrow()).isBetween(day(0.499), day(0.501));
    }

    @Test
    void readingsOfTheSamePlaceTellWhereThereAreAny() {
        LivedTemperature lived = box().extremes("BOX", 0, 3, 20, 24)
                .probe("P", "BOX", fromDay(0), 0, 0.1)
                .readings("P", 1, 2, 15, day -> 27)
                .livedUntil(3);

        assertThat(lived.spans())
                .extracting(LivedSpan::source)
                .containsExactly(
                        new BetweenExtremes("BOX", false),
                        new Probe("P", "BOX", false),
                        new BetweenExtremes("BOX", false));
        assertThat(WarmDays.of(lived, celsius -> celsius).total()).isCloseTo(22 + 27 + 22, within(1e-6));
    }

    @Test
    void aNearerThermometerTellsBeforeAFartherProbe() {
        LivedTemperature lived = box().extremes("BOX", 0, 1, 20, 24)
                .probe("P", "INC", fromDay(0), 0, 0.1)
                .readings("P", 0, 2, 15, day -> 27)
                .livedUntil(2);

        assertThat(lived.spans())
                .extracting(LivedSpan::source)
                .containsExactly(new BetweenExtremes("BOX", false), new Probe("P", "INC", false));
    }

    @Test
    void theyComeBeforeTheSetPointAndTeachWhatIsStillMissing() {
        LivedTemperature lived = box().setPoint("INC", fromDay(0), 27)
                .extremes("INC", 0, 4, 23, 27)
                .livedUntil(5);

        assertThat(lived.spans())
                .extracting(LivedSpan::source)
                .containsExactly(new BetweenExtremes("INC", false), new Habit("INC"));
        assertThat(WarmDays.of(lived, celsius -> celsius).total())
                .as("the day without any is as far below its set-point as those before")
                .isCloseTo(5 * 25, within(1e-6));
        assertThat(lived.gapFraction()).isCloseTo(0.2, within(1e-9));
        assertThat(lived.residualDays(3)).as("of the last three days two").hasSize(2);
    }

    @Test
    void aTrayThatMovesLivesWhatItsPlacesDid() {
        LivedTemperature lived = new RoomFixture()
                .stay(TRAY, ContainerKind.TRAY, "BOX", span(0, 1.5))
                .stay(TRAY, ContainerKind.TRAY, "SHELF", fromDay(1.5))
                .stay("BOX", ContainerKind.BOX, "", fromDay(0))
                .stay("SHELF", ContainerKind.RACK, "", fromDay(0))
                .extremes("BOX", 0, 1, 26, 28)
                .extremes("BOX", 1, 2, 27, 29)
                .extremes("SHELF", 1, 2, 20, 22)
                .extremes("SHELF", 2, 3, 21, 23)
                .livedUntil(3);

        assertThat(WarmDays.of(lived, celsius -> celsius).total()).isCloseTo(27 + 14 + 10.5 + 22, within(1e-6));
        assertThat(lived.gapFraction()).isZero();
    }

    @Test
    void ofOverlappingSpansTheShortestTells() {
        LivedTemperature lived = box().extremes("BOX", 0, 7, 20, 30)
                .extremes("BOX", 2, 3, 26, 28)
                .livedUntil(7);
        assertThat(WarmDays.of(lived, celsius -> celsius).total()).isCloseTo(6 * 25 + 27, within(1e-6));

        LivedTemperature corrected =
                box().extremes("BOX", 0, 1, 2, 7).extremes("BOX", 0, 1, 22, 27).livedUntil(1);
        assertThat(WarmDays.of(corrected, celsius -> celsius).total())
                .as("of the same span what was written last")
                .isCloseTo(24.5, within(1e-6));
    }

    @Test
    void theWiderTheRangeTheLessIsKnown() {
        double narrow = box().extremes("BOX", 0, 1, 26.5, 27.5)
                .livedUntil(1)
                .spans()
                .get(0)
                .sdCelsius();
        double wide =
                box().extremes("BOX", 0, 1, 17, 37).livedUntil(1).spans().get(0).sdCelsius();
        assertThat(narrow).isCloseTo(0.522, within(0.001));
        assertThat(wide).isCloseTo(3.041, within(0.001));
        WarmDays warmDays = WarmDays.of(box().extremes("BOX", 0, 2, 17, 37).livedUntil(2), celsius -> celsius);
        assertThat(warmDays.sd(LAID, day(2))).isCloseTo(2 * 3.041, within(0.01));
        assertThat(warmDays.unmeasuredSd(LAID, day(2))).isCloseTo(2 * 3.041, within(0.01));
    }

    @Test
    void whatIsReadLaterIsNotKnownYet() {
        assertThat(box().extremes("BOX", 0, 2, 20, 22).livedUntil(1.5).gapFraction())
                .isEqualTo(1);
    }

    @Test
    void aDayOnWhichTheClocksChangeIsAsLongAsItIs() {
        ZoneId berlin = ZoneId.of("Europe/Berlin");
        Instant from = LocalDate.of(2026, 3, 29).atStartOfDay(berlin).toInstant();
        Instant to = LocalDate.of(2026, 3, 30).atStartOfDay(berlin).toInstant();
        Extremes short23Hours = new Extremes("T1", from, to, 26, 28);
        LivedTemperature lived =
                LivedTemperature.of(new RoomFixture().record().withExtremes(List.of(short23Hours)), TRAY, to);
        assertThat(WarmDays.of(lived, celsius -> 1).between(from, to)).isCloseTo(23 / 24.0, within(1e-9));
        assertThat(lived.spans().get(lived.spans().size() - 1).from()).isEqualTo(from);
    }

    @Test
    void anyOverlapsLeaveNeitherHoleNorStep() {
        SplittableRandom random = new SplittableRandom(7);
        for (int round = 0; round < 200; round++) {
            RoomFixture room = box();
            for (int i = random.nextInt(1, 9); i > 0; i--) {
                double from = random.nextDouble(0, 8);
                double lowest = random.nextDouble(15, 27);
                room.extremes("BOX", from, from + random.nextDouble(0.01, 4), lowest, lowest + random.nextDouble(0, 8));
            }
            LivedTemperature lived = room.livedUntil(12);
            Instant end = LAID;
            for (LivedSpan piece : lived.spans()) {
                assertThat(piece.from()).as("round %d", round).isEqualTo(end);
                end = piece.to();
            }
            assertThat(end).isEqualTo(day(12));
            assertThat(WarmDays.of(lived, celsius -> 1).total()).isCloseTo(12, within(1e-9));
        }
    }

    @Test
    void impossibleValuesAreRefusedByName() {
        assertThatThrownBy(() -> new Extremes("BOX", day(0), day(1), 28, 22)).hasMessageContaining("highestCelsius");
        assertThatThrownBy(() -> new Extremes("BOX", day(0), day(1), -41, 22)).hasMessageContaining("lowestCelsius");
        assertThatThrownBy(() -> new Extremes("BOX", day(1), day(1), 20, 22)).hasMessageContaining("must be before");
        assertThatThrownBy(() -> new Extremes("BOX", day(0), day(32), 20, 22)).hasMessageContaining("31 days");
        assertThatThrownBy(() -> new Extremes("BOX", day(0), day(1), 20, 22, 40, Double.NaN))
                .hasMessageContaining("both");
        assertThatThrownBy(() -> new Extremes("BOX", day(0), day(1), 20, 22, 90, 40))
                .hasMessageContaining("highestPercent");
    }

    private static RoomFixture box() {
        return new RoomFixture()
                .stay(TRAY, ContainerKind.TRAY, "BOX", fromDay(0))
                .stay("BOX", ContainerKind.BOX, "INC", fromDay(0))
                .stay("INC", ContainerKind.INCUBATOR, "", fromDay(0));
    }
}
