package org.moultwright.compute.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Check;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Look;
import org.moultwright.domain.Stage;
import org.moultwright.exchange.TimingsFile;

/** Data as it comes: thin, wrong, extreme. Each is answered, none is thrown at. */
class OddBroodsTest {
    private static final Instant LAID = Instant.parse("2026-03-01T00:00:00Z");
    private static final Account A = Account.tray("A");

    private final List<LedgerEntry> entries = new ArrayList<>();
    private final List<Check> checks = new ArrayList<>();

    @Test
    void nothingWritten() {
        BroodForecast forecast = forecast(50, Optional.empty());
        assertThat(forecast.trays()).isEmpty();
        assertThat(forecast.yield()).isEmpty();
        assertThat(kinds(forecast)).contains(ForecastNote.Kind.TOO_LITTLE_TO_GO_ON);
    }

    @Test
    void openedButNeverLookedAt() {
        enter(25, Account.SAC, A, Stage.EGG, 50);
        TrayForecast tray = forecast(30).trays().get(0);
        assertThat(tray.expectedAlive()).isEqualTo(50);
        assertThat(tray.moults()).hasSize(3);
    }

    @Test
    void checksBeforeLaying() {
        full(-5, Stage.EGG, 40);
        full(10, Stage.EGG, 40);
        assertThat(kinds(forecast(20))).contains(ForecastNote.Kind.CHECKS_BEFORE_LAYING);
    }

    @Test
    void allDead() {
        enter(25, Account.SAC, A, Stage.EGG, 50);
        enter(30, A, Account.DEAD, Stage.EGG, 50);
        BroodForecast forecast = forecast(35);
        assertThat(forecast.trays().get(0).moults()).isEmpty();
        assertThat(forecast.yield().orElseThrow().p90()).isZero();
        assertThat(kinds(forecast)).contains(ForecastNote.Kind.NONE_ALIVE);
    }

    @Test
    void deadFoundSinceTheLastCountAreNotYetToCome() {
        enter(25, Account.SAC, A, Stage.EGG, 50);
        full(60, Stage.INSTAR1, 50);
        double before = forecast(64).yield().orElseThrow().p50();
        enter(63, A, Account.DEAD, Stage.INSTAR1, 20);
        BroodForecast after = forecast(64);
        assertThat(before).isGreaterThan(35);
        assertThat(after.yield().orElseThrow().p90()).isLessThanOrEqualTo(30);
        assertThat(after.yield().orElseThrow().p50()).isGreaterThan(24);
    }

    @Test
    void oneAnimal() {
        enter(25, Account.SAC, A, Stage.POSTEMBRYO, 1);
        full(45, Stage.INSTAR1, 1);
        assertThat(forecast(50).trays().get(0).moults()).hasSize(3);
    }

    @Test
    void twentyThousand() {
        enter(25, Account.SAC, A, Stage.EGG, 20_000);
        check(40, Map.of(Stage.POSTEMBRYO, new Look.Full(19_000), Stage.INSTAR1, new Look.Full(1_000)));
        assertThat(forecast(41).yield().orElseThrow().p50()).isBetween(10_000.0, 20_000.0);
    }

    /** Nobody counts so many: some are looked at, again and again. */
    @Test
    @Timeout(60)
    void twentyThousandOfWhichAHundredAreLookedAt() {
        InstantInterval ofMany = firstInstarOfSamples(20_000);
        entries.clear();
        checks.clear();
        InstantInterval ofFewer = firstInstarOfSamples(1_000);
        assertThat(Duration.between(ofMany.p50(), ofFewer.p50()))
                .isBetween(Duration.ofHours(-18), Duration.ofHours(18));
        assertThat(Duration.between(ofMany.p10(), ofMany.p90())).isLessThan(Duration.ofDays(5));
    }

    private InstantInterval firstInstarOfSamples(int animals) {
        enter(22, Account.SAC, A, Stage.EGG, animals);
        for (int day = 38; day < 50; day += 2) {
            check(day, Map.of(Stage.INSTAR1, new Look.Sample((day - 38) * 7, 100)));
        }
        return firstInstarInterval(50);
    }

    @Test
    void layingLaterThanTheQuestionIsSaidToBe() {
        enter(25, Account.SAC, A, Stage.EGG, 50);
        BroodForecast forecast = forecast(30, Optional.of(new InstantRange(day(90), day(91))));
        assertThat(kinds(forecast)).containsExactly(ForecastNote.Kind.LAID_LATER);
    }

    @Test
    void openedBeforeLaying() {
        enter(-5, Account.SAC, A, Stage.EGG, 50);
        assertThat(kinds(forecast(30))).contains(ForecastNote.Kind.OPENED_BEFORE_LAYING);
    }

    @Test
    void theLastCountFindingNoneIsSaidToBeOff() {
        enter(25, Account.SAC, A, Stage.EGG, 50);
        full(30, Stage.EGG, 50);
        full(33, Stage.POSTEMBRYO, 48);
        assertThat(kinds(forecast(35))).doesNotContain(ForecastNote.Kind.LAST_COUNT_OFF);
        full(35, Stage.POSTEMBRYO, 0);
        assertThat(forecast(36).notes()).contains(new ForecastNote(ForecastNote.Kind.LAST_COUNT_OFF, "A", 50));
        enter(35, A, Account.MISSING, Stage.POSTEMBRYO, 50);
        assertThat(kinds(forecast(36))).doesNotContain(ForecastNote.Kind.LAST_COUNT_OFF);
    }

    @Test
    void layingUnknown() {
        enter(5, Account.SAC, A, Stage.POSTEMBRYO, 30);
        full(6, Stage.POSTEMBRYO, 30);
        BroodForecast forecast = forecast(8, Optional.empty());
        assertThat(kinds(forecast)).contains(ForecastNote.Kind.AGES_FROM_FIRST_CHECK);
        assertThat(forecast.trays().get(0).moults()).isNotEmpty();
    }

    @Test
    void countsThatDoNotReconcile() {
        enter(25, Account.SAC, A, Stage.EGG, 50);
        full(30, Stage.EGG, 70);
        full(33, Stage.POSTEMBRYO, 71);
        BroodForecast forecast = forecast(35);
        assertThat(kinds(forecast)).contains(ForecastNote.Kind.COUNTS_DISAGREE);
        assertThat(forecast.trays().get(0).expectedAlive()).isEqualTo(70.5);
    }

    @Test
    void pottedAnimalsHavePassedEverything() {
        enter(25, Account.SAC, A, Stage.EGG, 10);
        full(70, Stage.INSTAR2, 10);
        enter(72, A, Account.POTTED, Stage.INSTAR1, 10);
        BroodForecast forecast = forecast(75);
        assertThat(forecast.yield().orElseThrow().p50()).isEqualTo(10);
        MoultForecast last = forecast.trays().get(0).moults().get(2);
        assertThat(last.half().p90()).isBeforeOrEqualTo(day(72));
    }

    @Test
    void movedAnimalsAreNotLost() {
        enter(25, Account.SAC, A, Stage.EGG, 40);
        full(44, Stage.POSTEMBRYO, 40);
        enter(45, A, Account.tray("B"), Stage.POSTEMBRYO, 15);
        full(46, Stage.POSTEMBRYO, 25);
        check("B", 46, Map.of(Stage.POSTEMBRYO, new Look.Full(15)));
        BroodForecast forecast = forecast(47);
        assertThat(forecast.tray("A").orElseThrow().expectedAlive()).isEqualTo(25);
        assertThat(forecast.tray("B").orElseThrow().expectedAlive()).isEqualTo(15);
        assertThat(forecast.yield().orElseThrow().p90()).isLessThanOrEqualTo(40);
    }

    @Test
    void aTrayFilledFromAnotherIsForecastAsThatIs() {
        enter(25, Account.SAC, A, Stage.EGG, 106);
        full(44, Stage.POSTEMBRYO, 106);
        BroodForecast whole = forecast(45.5);
        enter(45, A, Account.tray("B"), Stage.POSTEMBRYO, 20);
        BroodForecast parted = forecast(45.5);
        check("B", 46, Map.of(Stage.POSTEMBRYO, new Look.Full(20)));
        BroodForecast lookedAt = forecast(47);

        double yield = whole.yield().orElseThrow().p50();
        assertThat(parted.yield().orElseThrow().p50()).isCloseTo(yield, within(2.0));
        assertThat(lookedAt.yield().orElseThrow().p50()).isCloseTo(yield, within(2.0));
        Instant half = whole.trays().get(0).moults().get(1).half().p50();
        for (BroodForecast forecast : List.of(parted, lookedAt)) {
            Instant halfOfB =
                    forecast.tray("B").orElseThrow().moults().get(1).half().p50();
            assertThat(Duration.between(half, halfOfB).abs()).isLessThan(Duration.ofDays(2));
        }
    }

    @Test
    void aLookThatFoundNoneMovesTheDateOn() {
        enter(25, Account.SAC, A, Stage.POSTEMBRYO, 40);
        Instant before = firstInstar(48);
        check(48, Map.of(Stage.INSTAR1, new Look.None()));
        assertThat(firstInstar(48)).isAfter(before).isAfter(day(48));
    }

    @Test
    void aSightBringsItForward() {
        enter(25, Account.SAC, A, Stage.POSTEMBRYO, 40);
        full(28, Stage.POSTEMBRYO, 40);
        Instant before = firstInstar(35);
        check(34, Map.of(Stage.INSTAR1, new Look.Seen()));
        assertThat(firstInstar(35)).isBefore(before);
    }

    @Test
    void aSampleCountsForWhatItSays() {
        enter(25, Account.SAC, A, Stage.POSTEMBRYO, 300);
        full(30, Stage.POSTEMBRYO, 300);
        InstantInterval before = firstInstarInterval(41);
        check(40, Map.of(Stage.INSTAR1, new Look.Sample(18, 20)));
        InstantInterval after = firstInstarInterval(41);
        assertThat(after.p50()).isBefore(day(40));
        assertThat(Duration.between(after.p10(), after.p90())).isLessThan(Duration.between(before.p10(), before.p90()));
    }

    /** Nymphs counted in full and dark ones merely seen: how many have darkened is open, and is not none. */
    @Test
    void darkOnesSeenAmongCountedNymphsForetellTheMoult() {
        enter(25, Account.SAC, A, Stage.POSTEMBRYO, 40);
        full(46, Stage.INSTAR1, 40);
        check(56, Map.of(Stage.INSTAR1, new Look.Full(40), Stage.DARKENED, new Look.None()));
        InstantInterval unseen = forecast(60).trays().get(0).moults().get(2).first();
        check(58, Map.of(Stage.INSTAR1, new Look.Full(40), Stage.DARKENED, new Look.Seen()));
        MoultForecast dark = forecast(60).trays().get(0).moults().get(2);
        assertThat(dark.into()).isEqualTo(Stage.DARKENED);
        assertThat(dark.first().p50()).isBefore(unseen.p50()).isBefore(day(58.5));
        check(
                61,
                Map.of(
                        Stage.INSTAR1,
                        new Look.Full(37),
                        Stage.DARKENED,
                        new Look.Seen(),
                        Stage.INSTAR2,
                        new Look.Full(3)));
        assertThat(forecast(61).yield().orElseThrow().p90()).isLessThanOrEqualTo(40);
    }

    /** Half pass at once, then for weeks none, then the rest: two broods in one tray, or a moult written wrongly. */
    @Test
    void countsNoLawCanMakeAreSaidToBeSo() {
        enter(20, Account.SAC, A, Stage.EGG, 60);
        for (int day = 22; day < 60; day += 2) {
            int passed = day < 24 ? 0 : day < 50 ? 30 : 60;
            check(day, Map.of(Stage.EGG, new Look.Full(60 - passed), Stage.POSTEMBRYO, new Look.Full(passed)));
        }
        assertThat(kinds(forecast(60))).contains(ForecastNote.Kind.COUNTS_BEYOND_MODEL);
    }

    @Test
    void usualCountsAreNot() {
        enter(20, Account.SAC, A, Stage.EGG, 60);
        int[] passed = {1, 6, 18, 38, 52, 58, 60};
        for (int i = 0; i < passed.length; i++) {
            check(22 + i, Map.of(Stage.EGG, new Look.Full(60 - passed[i]), Stage.POSTEMBRYO, new Look.Full(passed[i])));
        }
        assertThat(kinds(forecast(30))).doesNotContain(ForecastNote.Kind.COUNTS_BEYOND_MODEL);
    }

    @Test
    void sameQuestionSameBits() {
        enter(25, Account.SAC, A, Stage.POSTEMBRYO, 40);
        full(40, Stage.INSTAR1, 20);
        assertThat(forecast(41)).isEqualTo(forecast(41));
    }

    @Test
    void compositionAddsUp() {
        enter(25, Account.SAC, A, Stage.POSTEMBRYO, 40);
        Composition composition = forecast(40).trays().get(0).compositions().get(0);
        double sum = composition.byStage().values().stream()
                .mapToDouble(CountInterval::p50)
                .sum();
        assertThat(sum)
                .isBetween(composition.alive().p10() - 4, composition.alive().p90() + 4);
    }

    private Instant firstInstar(double asOfDay) {
        return firstInstarInterval(asOfDay).p50();
    }

    private InstantInterval firstInstarInterval(double asOfDay) {
        return forecast(asOfDay).trays().get(0).moults().get(1).half();
    }

    private BroodForecast forecast(double asOfDay) {
        return forecast(asOfDay, Optional.of(new InstantRange(LAID, LAID)));
    }

    private BroodForecast forecast(double asOfDay, Optional<InstantRange> laid) {
        Brood brood = new Brood(
                "ODD",
                "Invented species",
                ZoneOffset.UTC,
                laid,
                Optional.empty(),
                List.of(Stage.values()),
                27,
                Optional.empty());
        BroodRecord empty = BroodRecord.of(brood);
        BroodRecord record = new BroodRecord(
                brood,
                Ledger.of(entries),
                checks,
                empty.stays(),
                empty.probeStays(),
                empty.setPoints(),
                empty.readings(),
                empty.mould(),
                empty.care(),
                empty.pots(),
                empty.runUp());
        return new Forecaster(TimingsFile.shipped())
                .forecast(new ForecastQuestion(record, day(asOfDay), PastBroods.NONE, 1, List.of(day(asOfDay + 7))));
    }

    private void enter(double day, Account from, Account to, Stage stage, int count) {
        entries.add(LedgerEntry.of(UUID.randomUUID(), day(day), from, to, stage, count, new Cause("test")));
    }

    private void full(double day, Stage stage, int count) {
        check(day, Map.of(stage, new Look.Full(count)));
    }

    private void check(double day, Map<Stage, Look> looks) {
        check("A", day, looks);
    }

    private void check(String tray, double day, Map<Stage, Look> looks) {
        checks.add(new Check(UUID.randomUUID(), tray, day(day), looks));
    }

    private static List<ForecastNote.Kind> kinds(BroodForecast forecast) {
        return forecast.notes().stream().map(ForecastNote::kind).toList();
    }

    private static Instant day(double day) {
        return LAID.plus(Duration.ofMinutes(Math.round(day * 24 * 60)));
    }
}
