package org.moultwright.compute.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Stage;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.workflow.BroodFolders;

/** Chances of four draws that can be counted by hand. */
class JointChanceTest {
    private static final Instant START = Instant.parse("2026-05-01T00:00:00Z");
    private static final int SEEDS = 12;
    private static final double NEVER = Double.NaN;

    /** First slings by draw, in days; separation is a week later. */
    private static final TrayForecast A1 = tray("A1", 30, new double[] {1, 2, 10, NEVER});

    private static final TrayForecast A2 = tray("A2", 30, new double[] {1, 9, 11, NEVER});
    private static final TrayForecast EMPTY = tray("A3", 0, new double[] {1, 1, 1, 1});

    @Test
    void traysOfABroodAreCountedDrawByDraw() {
        assertThat(separations(3, 8.5, brood(A1)).probability()).isEqualTo(0.25);
        assertThat(separations(3, 9.5, brood(A1, A2)).probability()).isEqualTo(0.5);
        assertThat(separations(8.5, 19, brood(A1, A2)).probability()).isEqualTo(0.5);
        assertThat(separations(3, 99, brood(A1, A2)).probability()).isEqualTo(0.75);
        assertThat(JointChance.ofAny(List.of(brood(EMPTY)), HandsEvent.ALL, at(0), at(99)))
                .isEmpty();
    }

    @Test
    void broodsTellNothingOfEachOther() {
        assertThat(separations(3, 9.5, brood(A1), brood(A2)).probability()).isCloseTo(1 - 0.5 * 0.75, within(1e-12));
    }

    @Test
    void everyEventIsAskedOfItsOwnStage() {
        Instant from = at(0);
        Instant to = at(2.5);
        List<BroodForecast> broods = List.of(brood(A1));
        assertThat(chance(broods, EnumSet.of(HandsEvent.FIRST_MOULT), from, to)).isEqualTo(0.5);
        assertThat(chance(broods, EnumSet.of(HandsEvent.FIRST_DARK), from, to)).isZero();
        assertThat(chance(broods, EnumSet.of(HandsEvent.HALF), at(100), at(102.5)))
                .isEqualTo(0.5);
        assertThat(chance(broods, EnumSet.of(HandsEvent.MOST), at(200), at(202.5)))
                .isEqualTo(0.5);
        assertThat(chance(broods, EnumSet.allOf(HandsEvent.class), from, to)).isEqualTo(0.5);
    }

    /** The standard error of a share p of n draws is √(p(1−p)/n); here of 400 worth, with one more of each. */
    @Test
    void theErrorIsThatOfTheDraws() {
        TrayForecast half = tray("A1", 30, alternating(400));
        JointChance chance = separations(0, 9, brood(half));
        assertThat(chance.probability()).isEqualTo(0.5);
        assertThat(chance.monteCarloSd()).isCloseTo(0.025, within(1e-4));
        assertThat(separations(0, 1, brood(half)).monteCarloSd()).isBetween(0.001, 0.004);
    }

    /** The demo's second brood under many seeds: the chances scatter about as far as each says of itself. */
    @Test
    void theErrorIsThatOfOtherSeeds() {
        BroodRecord record = demo("demo-data/cc-26-b");
        Instant asOf = Instant.parse("2026-05-03T19:41:00Z");
        Instant from = Instant.parse("2026-05-08T00:00:00Z");
        Instant to = Instant.parse("2026-05-16T00:00:00Z");
        double[] chances = new double[SEEDS];
        double told = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            BroodForecast forecast = new Forecaster(TimingsFile.shipped())
                    .forecast(new ForecastQuestion(record, asOf, PastBroods.NONE, 100 + seed, List.of()));
            JointChance chance = JointChance.ofAny(List.of(forecast), Set.of(HandsEvent.SEPARATION), from, to)
                    .orElseThrow();
            chances[seed] = chance.probability();
            told += chance.monteCarloSd() / SEEDS;
        }
        double mean = Arrays.stream(chances).average().orElseThrow();
        double sd = Math.sqrt(Arrays.stream(chances)
                .map(chance -> (chance - mean) * (chance - mean) / (SEEDS - 1))
                .sum());
        assertThat(mean).isBetween(0.1, 0.9);
        assertThat(sd).isBetween(told / 3, told * 2);
    }

    private static BroodRecord demo(String folder) {
        BroodFolders.FolderContent content = new PlainBroodFolders().read(Path.of(folder));
        return content.record().orElseThrow().withReadings(content.readings().gathered());
    }

    private static double chance(List<BroodForecast> broods, Set<HandsEvent> events, Instant from, Instant to) {
        return JointChance.ofAny(broods, events, from, to).orElseThrow().probability();
    }

    private static double[] alternating(int draws) {
        double[] days = new double[draws];
        for (int draw = 0; draw < draws; draw++) {
            days[draw] = draw % 2 == 0 ? 1 : 50;
        }
        return days;
    }

    private static JointChance separations(double fromDay, double toDay, BroodForecast... broods) {
        return JointChance.ofAny(List.of(broods), Set.of(HandsEvent.SEPARATION), at(fromDay), at(toDay))
                .orElseThrow();
    }

    private static Instant at(double days) {
        return START.plusMillis(Math.round(days * Duration.ofDays(1).toMillis()));
    }

    private static BroodForecast brood(TrayForecast... trays) {
        return new BroodForecast(
                "CC-26-A",
                START,
                60,
                0,
                PriorSource.GENERAL,
                0,
                List.of(trays),
                Stage.INSTAR2,
                Optional.empty(),
                List.of());
    }

    private static TrayForecast tray(String code, double alive, double[] firstDays) {
        double[][] millis = new double[3][firstDays.length];
        for (int draw = 0; draw < firstDays.length; draw++) {
            for (int milestone = 0; milestone < 3; milestone++) {
                millis[milestone][draw] = START.toEpochMilli()
                        + (firstDays[draw] + 100 * milestone)
                                * Duration.ofDays(1).toMillis();
            }
        }
        return new TrayForecast(
                code,
                60,
                alive,
                List.of(),
                List.of(),
                new PossibleDates(List.of(Stage.INSTAR2), millis, firstDays.length));
    }
}
