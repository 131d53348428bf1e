package org.moultwright.workflow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.moultwright.domain.AlarmKind.HIGH;
import static org.moultwright.domain.AlarmKind.SILENT;
import static org.moultwright.domain.AlarmTurn.ACKNOWLEDGED;
import static org.moultwright.domain.AlarmTurn.ANNOUNCED_AGAIN;
import static org.moultwright.domain.AlarmTurn.CLEARED;
import static org.moultwright.domain.AlarmTurn.OUT_OF_SERVICE;
import static org.moultwright.domain.AlarmTurn.RAISED;
import static org.moultwright.domain.AlarmTurn.SNOOZED;
import static org.moultwright.domain.AlarmTurn.SNOOZE_ENDED;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.alarm.AlarmRules;
import org.moultwright.compute.alarm.AlarmState.Phase;
import org.moultwright.compute.alarm.Observation;
import org.moultwright.compute.alarm.WatchSettings;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.AlarmTurn;

class WatchContainerTest {
    private static final WatchSettings USUAL = AlarmRules.usual(Duration.ofSeconds(10), 0.1);

    private final MemoryAlarmJournal journal = new MemoryAlarmJournal();
    private Instant now = Instant.parse("2026-05-05T20:00:00Z");
    private long nanos = 5_000_000_007L;
    private WatchContainer watching = begin();

    @Test
    void whatHappensIsInTheJournal() {
        read(30, Duration.ofMinutes(6));
        watching.acknowledge(HIGH);
        read(27, Duration.ofMinutes(2));

        assertThat(turns(HIGH)).containsExactly(RAISED, ACKNOWLEDGED, CLEARED);
        assertThat(journal.of("box").get(0).value()).isEqualTo(30);
        assertThat(journal.of("other")).isEmpty();
    }

    @Test
    void aSnoozeSaysUntilWhen() {
        watching.snooze(HIGH, Duration.ofMinutes(30));

        assertThat(journal.of("box"))
                .extracting(AlarmEntry::quietUntil)
                .containsExactly(Optional.of(now.plus(Duration.ofMinutes(30))));
    }

    @Test
    void silenceIsFoundByTicks() {
        read(27, Duration.ofMinutes(1));
        for (int i = 0; i < 13; i++) {
            pass(5);
            watching.tick();
        }
        assertThat(turns(SILENT)).containsExactly(RAISED);
        assertThat(watching.alarm(SILENT).isSounding()).isTrue();
    }

    @Test
    void whatCannotBeWrittenDownIsNotShownAsDoneAndComesWithTheNextReading() {
        read(30, Duration.ofMinutes(5));
        journal.fill(true);
        pass(10);
        assertThatIllegalStateException().isThrownBy(() -> watching.heard(sample(30)));
        assertThat(watching.alarm(HIGH).isActive()).isFalse();

        journal.fill(false);
        read(30, Duration.ofSeconds(10));
        assertThat(turns(HIGH)).containsExactly(RAISED);

        journal.fill(true);
        assertThatIllegalStateException().isThrownBy(() -> watching.acknowledge(HIGH));
        assertThat(watching.alarm(HIGH).phase()).isEqualTo(Phase.ACTIVE_UNSEEN);
    }

    @Test
    void aRestartForgetsNothingThatStood() {
        read(30, Duration.ofMinutes(6));
        watching = begin();
        assertThat(watching.alarm(HIGH).isSounding()).isTrue();

        watching.acknowledge(HIGH);
        watching = begin();
        assertThat(watching.alarm(HIGH).phase()).isEqualTo(Phase.ACTIVE_SEEN);
        read(30, Duration.ofMinutes(6));
        assertThat(turns(HIGH)).containsExactly(RAISED, ACKNOWLEDGED);

        read(27, Duration.ofMinutes(2));
        watching = begin();
        assertThat(watching.alarm(HIGH).phase()).isEqualTo(Phase.QUIET);
        assertThat(turns(HIGH)).containsExactly(RAISED, ACKNOWLEDGED, CLEARED);
    }

    @Test
    void aSnoozeOutlastsARestartAndNoLonger() {
        read(30, Duration.ofMinutes(6));
        watching.snooze(HIGH, Duration.ofMinutes(20));
        watching = begin();
        assertThat(watching.alarm(HIGH).isSounding()).isFalse();

        pass(Duration.ofHours(1).toSeconds());
        watching = begin();
        read(30, Duration.ofSeconds(10));
        assertThat(turns(HIGH)).containsExactly(RAISED, SNOOZED, SNOOZE_ENDED, ANNOUNCED_AGAIN);
        assertThat(watching.alarm(HIGH).isSounding()).isTrue();
    }

    @Test
    void anAlarmNoLongerWatchedForIsWrittenDownOnce() {
        read(30, Duration.ofMinutes(6));
        watching.watchBy(USUAL.without(HIGH));
        read(30, Duration.ofMinutes(1));
        watching = begin();

        assertThat(turns(HIGH)).containsExactly(RAISED, OUT_OF_SERVICE);
        assertThat(watching.alarm(HIGH).phase()).isEqualTo(Phase.QUIET);
    }

    private WatchContainer begin() {
        return new WatchContainer("box", USUAL, journal, () -> now, () -> nanos, UUID::randomUUID, entry -> {});
    }

    private void read(double celsius, Duration lasting) {
        for (long i = 0; i < lasting.toSeconds() / 10; i++) {
            pass(10);
            watching.heard(sample(celsius));
        }
    }

    private void pass(long seconds) {
        now = now.plusSeconds(seconds);
        nanos += Duration.ofSeconds(seconds).toNanos();
    }

    private List<AlarmTurn> turns(AlarmKind kind) {
        return journal.of("box").stream()
                .filter(entry -> entry.kind() == kind)
                .map(AlarmEntry::turn)
                .toList();
    }

    private static Observation.Sample sample(double celsius) {
        return new Observation.Sample(celsius, celsius, Double.NaN, Double.NaN, Optional.empty());
    }
}
