package org.moultwright.compute.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.LongStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Stay;
import org.moultwright.domain.Timing;
import org.moultwright.exchange.TimingsFile;

/**
 * A sac still with its mother. By hand: at 25 °C a line from 12 °C lives 13/15 warm-days a day, so that 24, 41 and 66
 * warm-days take 27.69, 47.31 and 76.15 days. The log of an age has a variance of batch² + stage²·ΣB² as believed,
 * the mean of ω² + ψ²·ΣB² over the grid of the learner by its weights alone, and the tray's 0.025²; that makes
 * 80 % windows of 22.9 to 33.5, 39.7 to 56.3 and 64.4 to 90.1 days.
 */
class SacForecastTest {
    private static final Instant LAID = Instant.parse("2026-03-01T00:00:00Z");
    private static final Offset<Double> DAYS = within(1.5);

    /** So many, that what chance leaves in one answer does not decide. */
    private static final int SEEDS = 8;

    @Test
    void agesAndDatesAreThoseReckonedByHand() {
        BroodForecast forecast = forecast(record(List.of(setPoint("sac", 25)), List.of()));
        SacForecast sac = forecast.sac().orElseThrow();
        assertThat(sac.days()).isEqualTo(10);
        assertThat(sac.warmDays()).isCloseTo(10 * 13 / 15.0, within(1e-9));
        requireWindow(Stage.POSTEMBRYO, 22.9, 27.69, 33.5);
        requireWindow(Stage.INSTAR1, 39.7, 47.31, 56.3);
        requireWindow(Stage.INSTAR2, 64.4, 76.15, 90.1);
        SacForecast.PullWindow pull = sac.pull().orElseThrow();
        assertThat(days(pull.from())).isCloseTo(27.69, DAYS);
        assertThat(days(pull.to())).isCloseTo(47.31, DAYS);
    }

    @Test
    void thereIsNoTrayNoYieldAndThatIsSaid() {
        BroodForecast forecast = forecast(record(List.of(setPoint("sac", 25)), List.of()));
        assertThat(forecast.trays()).isEmpty();
        assertThat(forecast.yield()).isEmpty();
        assertThat(forecast.priorFrom()).isEqualTo(PriorSource.FOLDER);
        assertThat(forecast.notes())
                .extracting(ForecastNote::kind)
                .contains(ForecastNote.Kind.SAC_UNOPENED)
                .doesNotContain(ForecastNote.Kind.TOO_LITTLE_TO_GO_ON);
        assertThat(forecast.expectedAges())
                .extracting(ExpectedAge::p50)
                .satisfies(ages -> assertThat(ages.get(2)).isCloseTo(66, within(1e-6)));
    }

    /** A box at 27 °C lives one warm-day a day; a container named after the brood stands for the sac as well. */
    @Test
    void theClimateIsThatOfTheMothersBox() {
        List<SetPoint> inBox = List.of(setPoint("box M", 27));
        for (String container : List.of("sac", "CC-26-A")) {
            Stay stay = new Stay(container, ContainerKind.HAMMOCK, Optional.of("box M"), since());
            SacForecast sac = forecast(record(inBox, List.of(stay))).sac().orElseThrow();
            assertThat(sac.warmDays()).as(container).isCloseTo(10, within(1e-9));
            assertThat(days(sac.moult(Stage.INSTAR2).orElseThrow().half().p50()))
                    .isCloseTo(66, DAYS);
        }
    }

    @Test
    void withoutALayingThereIsNothingToGoOn() {
        BroodRecord record = record(List.of(setPoint("sac", 25)), List.of());
        Brood brood = record.brood();
        Brood unknown = new Brood(
                brood.code(),
                brood.taxon(),
                brood.zone(),
                Optional.empty(),
                brood.pulled(),
                brood.stages(),
                brood.referenceTemperatureCelsius(),
                brood.timing());
        assertThat(forecast(record.withBrood(unknown)).sac()).isEmpty();
    }

    private static void requireWindow(Stage into, double p10, double p50, double p90) {
        List<InstantInterval> halves = LongStream.rangeClosed(1, SEEDS)
                .mapToObj(seed -> forecast(record(List.of(setPoint("sac", 25)), List.of()), seed))
                .map(forecast ->
                        forecast.sac().orElseThrow().moult(into).orElseThrow().half())
                .toList();
        assertThat(meanDays(halves, InstantInterval::p10)).as("%s, 10 %%", into).isCloseTo(p10, DAYS);
        assertThat(meanDays(halves, InstantInterval::p50))
                .as("%s, middle", into)
                .isCloseTo(p50, DAYS);
        assertThat(meanDays(halves, InstantInterval::p90)).as("%s, 90 %%", into).isCloseTo(p90, within(2.5));
    }

    private static double meanDays(List<InstantInterval> halves, Function<InstantInterval, Instant> bound) {
        return halves.stream()
                .mapToDouble(half -> days(bound.apply(half)))
                .average()
                .orElseThrow();
    }

    private static double days(Instant instant) {
        return Duration.between(LAID, instant).toMillis()
                / (double) Duration.ofDays(1).toMillis();
    }

    private static BroodForecast forecast(BroodRecord record) {
        return forecast(record, 1);
    }

    private static BroodForecast forecast(BroodRecord record, long seed) {
        Instant asOf = LAID.plus(Duration.ofDays(10));
        return new Forecaster(TimingsFile.shipped())
                .forecast(new ForecastQuestion(record, asOf, PastBroods.NONE, seed, List.of()));
    }

    private static SetPoint setPoint(String container, double celsius) {
        return new SetPoint(container, since(), celsius, Double.NaN);
    }

    private static Span since() {
        return new Span(LAID, Optional.empty());
    }

    private static BroodRecord record(List<SetPoint> setPoints, List<Stay> stays) {
        Brood brood = new Brood(
                "CC-26-A",
                "Inventa prima",
                ZoneId.of("UTC"),
                Optional.of(new InstantRange(LAID, LAID)),
                Optional.empty(),
                List.of(Stage.EGG, Stage.POSTEMBRYO, Stage.INSTAR1, Stage.INSTAR2),
                27,
                Optional.of(new Timing(
                        Map.of(Stage.POSTEMBRYO, 24.0, Stage.INSTAR1, 41.0, Stage.INSTAR2, 66.0),
                        0.1,
                        new RateForm.Linear(12))));
        BroodRecord empty = BroodRecord.of(brood);
        return new BroodRecord(
                brood,
                empty.ledger(),
                List.of(),
                stays,
                List.of(),
                setPoints,
                Map.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }
}
