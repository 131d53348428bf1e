package org.moultwright.workflow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.moultwright.domain.AlarmKind.CONDENSATION;
import static org.moultwright.domain.AlarmKind.DRIFT;
import static org.moultwright.domain.AlarmKind.HIGH;
import static org.moultwright.domain.AlarmKind.SILENT;
import static org.moultwright.domain.AlarmTurn.ACKNOWLEDGED;
import static org.moultwright.domain.AlarmTurn.CLEARED;
import static org.moultwright.domain.AlarmTurn.OUT_OF_SERVICE;
import static org.moultwright.domain.AlarmTurn.RAISED;
import static org.moultwright.domain.AlarmTurn.SNOOZED;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.AlarmLimits;
import org.moultwright.domain.AlarmTurn;
import org.moultwright.domain.Calibration;
import org.moultwright.domain.CalibrationMethod;
import org.moultwright.domain.CalibrationPoint;
import org.moultwright.domain.ColdestWall;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.Correction;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Shelf;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stay;

class KeepWatchTest {
    private static final Instant START = Instant.parse("2026-05-05T20:00:00Z");
    private static final Span ALWAYS = new Span(Instant.EPOCH, Optional.empty());
    private static final Duration PERIOD = Duration.ofSeconds(10);
    private static final ProbeStay IN_BOX = new ProbeStay("P-1", "box", ALWAYS, 0.5, 0.05);

    private final MemoryAlarmJournal journal = new MemoryAlarmJournal();
    private final Readings log = new Readings();
    private final List<AlarmEntry> told = new ArrayList<>();
    private WatchView view = WatchView.NOTHING;
    private Instant now = START;
    private long nanos = 12_345;
    private WatchPlaces places = places(IN_BOX, 27);
    private KeepWatch watch = restarted();

    @Test
    void theAirIsJudgedNotWhatTheProbeSays() {
        read(29.4, Duration.ofMinutes(7));
        assertThat(view.alarms()).isEmpty();
        read(29.8, Duration.ofMinutes(6));

        assertThat(view.alarms()).singleElement().satisfies(alarm -> {
            assertThat(alarm.place()).isEqualTo("box");
            assertThat(alarm.kind()).isEqualTo(HIGH);
            assertThat(alarm.celsius()).isEqualTo(29.8 - 0.5);
            assertThat(alarm.since()).isEqualTo(journal.of("box").get(0).at());
            assertThat(alarm.wantsEyes()).isTrue();
        });
        assertThat(told).isEqualTo(journal.of("box"));
    }

    @Test
    void limitsFollowTheSetPointOfTheContainerOrTheNearestAroundIt() {
        watch.follow(
                new WatchPlaces(
                        List.of(IN_BOX),
                        new Shelf(List.of(new Stay("box", ContainerKind.BOX, Optional.of("incubator"), ALWAYS))),
                        List.of(new SetPoint("incubator", ALWAYS, 22, Double.NaN))),
                AlarmLimits.USUAL);
        read(22.5, Duration.ofMinutes(6));
        assertThat(turns(HIGH)).isEmpty();
        read(25, Duration.ofMinutes(6));
        assertThat(turns(HIGH)).containsExactly(RAISED);
    }

    @Test
    void aProbeNobodyPlacedIsWatchedUnderItsOwnCode() {
        watch.begin("P-9");
        for (int i = 0; i < 40; i++) {
            pass(PERIOD);
            watch.heard("P-9", new Reading(now, 30, Double.NaN, Quality.GOOD));
        }
        assertThat(journal.of("P-9")).extracting(AlarmEntry::kind).contains(HIGH);
    }

    @Test
    void silenceIsCountedFromWhatTheProbeIsUsedTo() {
        read(27.5, Duration.ofMinutes(2));
        passTicking(Duration.ofSeconds(55));
        assertThat(turns(SILENT)).isEmpty();
        passTicking(Duration.ofSeconds(10));
        assertThat(turns(SILENT)).containsExactly(RAISED);

        KeepWatch slow = restarted();
        slow.begin("P-2");
        for (int i = 0; i < 8; i++) {
            for (int second = 0; second < 300; second += 3) {
                pass(Duration.ofSeconds(3));
                slow.tick();
            }
            slow.heard("P-2", new Reading(now, 27, Double.NaN, Quality.GOOD));
        }
        assertThat(journal.of("P-2")).extracting(AlarmEntry::turn).startsWith(RAISED, CLEARED);
        int before = journal.of("P-2").size();
        for (int i = 0; i < 290; i++) {
            pass(Duration.ofSeconds(3));
            slow.tick();
        }
        assertThat(journal.of("P-2")).hasSize(before);
    }

    @Test
    void badReadingsAndProbesNobodyListensToSayNothing() {
        for (int i = 0; i < 60; i++) {
            pass(PERIOD);
            watch.heard("P-1", new Reading(now, 60, Double.NaN, Quality.SUSPECT));
            watch.heard("P-7", new Reading(now, 60, Double.NaN, Quality.GOOD));
        }
        assertThat(journal.of("P-7")).isEmpty();
        assertThat(turns(HIGH)).isEmpty();
    }

    @Test
    void nothingIsShownThatIsNotInTheJournalAndTheFaultIsSaid() {
        read(30, Duration.ofMinutes(4));
        journal.fill(true);
        read(30, Duration.ofMinutes(2));
        watch.tick();
        assertThat(view.alarms()).isEmpty();
        assertThat(told).isEmpty();
        assertThat(view.unwritten()).get().extracting(Throwable::getMessage).isEqualTo("the disk is full");

        journal.fill(false);
        watch.tick();
        read(30, PERIOD.multipliedBy(2));
        assertThat(view.unwritten()).isEmpty();
        assertThat(turns(HIGH)).containsExactly(RAISED);
    }

    @Test
    void aRestartRemembersTheHabitOfTheLastDay() {
        assertThat(minutesToDrift(false)).isEmpty();
        assertThat(minutesToDrift(true))
                .get()
                .satisfies(minutes -> assertThat(minutes).isBetween(60, 180));
    }

    @Test
    void aPauseOfTheProgramIsNoSilenceAndRaisesNothing() {
        log.fill(27.5, START.minus(KeepWatch.REMEMBERED), START.minus(Duration.ofHours(6)));
        watch = restarted();
        passTicking(Duration.ofSeconds(57));
        assertThat(told).isEmpty();
        passTicking(Duration.ofMinutes(3));
        assertThat(turns(SILENT)).containsExactly(RAISED);
    }

    @Test
    void aNewCalibrationLearnsTheHabitAnew() {
        assertThat(minutesToDrift(true)).isPresent();
        watch.follow(places(new ProbeStay("P-1", "box", ALWAYS, 1.5, 0.05), 27), AlarmLimits.USUAL);
        assertThat(turns(DRIFT)).containsExactly(RAISED, CLEARED);
        int before = told.size();
        watch.follow(places(new ProbeStay("P-1", "box", ALWAYS, 1.5, 0.05), 27), AlarmLimits.USUAL);
        assertThat(told).hasSize(before);
    }

    @Test
    void aProbeThatMovesTakesItsWatchAlong() {
        read(30, Duration.ofMinutes(6));
        watch.follow(places(new ProbeStay("P-1", "other box", ALWAYS, 0.5, 0.05), 27), AlarmLimits.USUAL);
        assertThat(turns(HIGH)).containsExactly(RAISED, OUT_OF_SERVICE);
        read(30, Duration.ofMinutes(6));
        assertThat(journal.of("other box")).extracting(AlarmEntry::turn).containsExactly(RAISED);
    }

    @Test
    void twoProbesInOneContainerAreToldApart() {
        places = new WatchPlaces(
                List.of(IN_BOX, new ProbeStay("P-2", "box", ALWAYS, 0, 0)), new Shelf(List.of()), List.of());
        watch = restarted();
        watch.begin("P-2");
        assertThat(view.places()).extracting(WatchView.Place::name).containsExactly("box, P-1", "box, P-2");
    }

    @Test
    void whatStandsIsSeenOrPutOffAndEndsWithTheListening() {
        read(30, Duration.ofMinutes(6));
        watch.snooze(Duration.ofMinutes(15));
        assertThat(view.alarms())
                .extracting(WatchView.Alarm::quietUntil)
                .containsExactly(Optional.of(now.plus(Duration.ofMinutes(15))));
        assertThat(view.isSounding()).isFalse();
        watch.acknowledge();
        watch.end("P-1");
        assertThat(turns(HIGH)).containsExactly(RAISED, SNOOZED, ACKNOWLEDGED, OUT_OF_SERVICE);
        assertThat(view).isEqualTo(WatchView.NOTHING);
    }

    @Test
    void waterOnAWallRingsWhereTheKeeperSaidHowColdTheWallIsAndOnlyThere() {
        readMoist(27.5, 97, Duration.ofMinutes(40));
        assertThat(turns(CONDENSATION)).isEmpty();
        watch.follow(wall(ColdestWall.below(3, 1)), AlarmLimits.USUAL);
        readMoist(27.5, 97, Duration.ofMinutes(40));
        assertThat(view.alarms()).extracting(WatchView.Alarm::kind).containsExactly(CONDENSATION);
        assertThat(view.alarms().get(0).raisedAt()).isBetween(-3.0, -2.0);

        watch.follow(places, AlarmLimits.USUAL);
        readMoist(27.5, 97, PERIOD);
        assertThat(turns(CONDENSATION)).containsExactly(RAISED, OUT_OF_SERVICE);
    }

    @Test
    void aProbeOnTheWallTellsOfItUntilItIsSilent() {
        places = wall(ColdestWall.measuredBy("P-2"));
        watch = restarted();
        watch.begin("P-2");
        readWithWall(97, 24, Duration.ofMinutes(25));
        readMoist(27.5, 97, Duration.ofMinutes(40));
        assertThat(turns(CONDENSATION)).isEmpty();
        readWithWall(97, 24, Duration.ofMinutes(20));
        assertThat(turns(CONDENSATION)).containsExactly(RAISED);
        readWithWall(60, 24, Duration.ofMinutes(12));
        assertThat(turns(CONDENSATION)).containsExactly(RAISED, CLEARED);
    }

    @Test
    void aCalibratedHumidityIsJudgedNotWhatTheProbeSays() {
        Calibration readsLow = new Calibration(
                UUID.randomUUID(),
                "P-1",
                CalibrationMethod.SATURATED_SALTS,
                Instant.EPOCH,
                Instant.EPOCH,
                Instant.parse("2027-01-01T00:00:00Z"),
                List.of(new CalibrationPoint(75, 0.5, 60, 0.5, "sodium chloride")),
                Correction.constant(15, 1),
                "");
        places = places.withWalls(Map.of("box", ColdestWall.below(2, 0.5)), List.of(readsLow));
        watch = restarted();
        readMoist(27.5, 82, Duration.ofMinutes(40));
        assertThat(turns(CONDENSATION)).containsExactly(RAISED);
    }

    @Test
    void aStoreThatCannotBeReadDelaysTheWatchOnly() {
        log.broken = true;
        watch = restarted();
        assertThat(view.unwritten()).isPresent();
        log.broken = false;
        watch.tick();
        assertThat(view.places()).hasSize(1);
        assertThat(view.unwritten()).isEmpty();
    }

    /** A day at 27 °C in the log or not, then 28 °C for up to four hours. */
    private Optional<Integer> minutesToDrift(boolean remembered) {
        if (remembered) {
            log.fill(27.5, now.minus(KeepWatch.REMEMBERED), now);
        }
        watch = restarted();
        for (int minute = 1; minute <= 240; minute++) {
            pass(Duration.ofMinutes(1));
            watch.heard("P-1", new Reading(now, 28.5 + minute % 3 * 0.01, Double.NaN, Quality.GOOD));
            if (!turns(DRIFT).isEmpty()) {
                return Optional.of(minute);
            }
        }
        return Optional.empty();
    }

    private KeepWatch restarted() {
        KeepWatch begun = new KeepWatch(
                journal, log, () -> now, () -> nanos, UUID::randomUUID, places, AlarmLimits.USUAL, new WatchListener() {
                    @Override
                    public void turned(AlarmEntry entry) {
                        assertThat(journal.of(entry.container())).contains(entry);
                        told.add(entry);
                    }

                    @Override
                    public void stands(WatchView now) {
                        view = now;
                    }
                });
        begun.begin("P-1");
        return begun;
    }

    private void read(double celsius, Duration lasting) {
        for (long i = 0; i < lasting.toSeconds() / PERIOD.toSeconds(); i++) {
            pass(PERIOD);
            watch.heard("P-1", new Reading(now, celsius, Double.NaN, Quality.GOOD));
        }
    }

    private void readMoist(double celsius, double percent, Duration lasting) {
        for (long i = 0; i < lasting.toSeconds() / PERIOD.toSeconds(); i++) {
            pass(PERIOD);
            watch.heard("P-1", new Reading(now, celsius + i % 3 * 0.01, percent, Quality.GOOD));
        }
    }

    private void readWithWall(double percent, double wallCelsius, Duration lasting) {
        for (long i = 0; i < lasting.toSeconds() / PERIOD.toSeconds(); i++) {
            readMoist(27.5, percent, PERIOD);
            watch.heard("P-2", new Reading(now, wallCelsius, Double.NaN, Quality.GOOD));
        }
    }

    private WatchPlaces wall(ColdestWall wall) {
        return places.withWalls(Map.of("box", wall), List.of());
    }

    private void passTicking(Duration lasting) {
        for (long i = 0; i < lasting.toSeconds(); i++) {
            pass(Duration.ofSeconds(1));
            watch.tick();
        }
    }

    private void pass(Duration time) {
        now = now.plus(time);
        nanos += time.toNanos();
    }

    private List<AlarmTurn> turns(AlarmKind kind) {
        return journal.of("box").stream()
                .filter(entry -> entry.kind() == kind)
                .map(AlarmEntry::turn)
                .toList();
    }

    private static WatchPlaces places(ProbeStay stay, double setPointCelsius) {
        return new WatchPlaces(
                List.of(stay),
                new Shelf(List.of()),
                List.of(new SetPoint(stay.container(), ALWAYS, setPointCelsius, Double.NaN)));
    }

    /** Readings of the past, a minute apart, each a little different from the one before. */
    private static final class Readings implements ReadingLog {
        private ReadingSeries past = ReadingSeries.EMPTY;
        private boolean broken;

        void fill(double celsius, Instant from, Instant to) {
            ReadingSeries.Builder builder = new ReadingSeries.Builder();
            int number = 0;
            for (Instant at = from; at.isBefore(to); at = at.plusSeconds(60)) {
                builder.add(new Reading(at, celsius + number++ % 3 * 0.01, Double.NaN, Quality.GOOD));
            }
            past = builder.build();
        }

        @Override
        public List<Logged> append(String probe, List<Logged> readings) {
            return readings;
        }

        @Override
        public ReadingSeries series(String probe, Instant from, Instant to) {
            if (broken) {
                throw new IllegalStateException("the disk is gone");
            }
            return probe.equals("P-1") ? past.between(from, to) : ReadingSeries.EMPTY;
        }

        @Override
        public Map<String, Reading> latest() {
            return Map.of();
        }
    }
}
