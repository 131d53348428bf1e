package org.moultwright.compute.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.moultwright.domain.AlarmKind.HIGH;
import static org.moultwright.domain.AlarmKind.SILENT;
import static org.moultwright.domain.AlarmTurn.ACKNOWLEDGED;
import static org.moultwright.domain.AlarmTurn.ANNOUNCED_AGAIN;
import static org.moultwright.domain.AlarmTurn.CLEARED;
import static org.moultwright.domain.AlarmTurn.ESCALATED;
import static org.moultwright.domain.AlarmTurn.RAISED;
import static org.moultwright.domain.AlarmTurn.SNOOZED;
import static org.moultwright.domain.AlarmTurn.SNOOZE_ENDED;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.alarm.AlarmState.Phase;
import org.moultwright.domain.AlarmKind;

/** Limit 31.0, deadband 0.3, on-delay 60 s, off-delay 60 s, a reading each 10 s; states after OPC UA part 9. */
class AlarmCasesTest {
    private static final Duration MINUTE = Duration.ofSeconds(60);
    private static final AlarmRule RULE =
            new AlarmRule(HIGH, 31.0, 0.3, MINUTE, MINUTE, MINUTE, Duration.ofMinutes(10));
    private static final WatchSettings SETTINGS = AlarmRules.usual(Duration.ofSeconds(10), 0.1)
            .without(AlarmKind.VERY_HIGH)
            .with(RULE);

    private final Watching watching = new Watching(SETTINGS);

    @Test
    void fiftySecondsAboveAreNoAlarm() {
        watching.read(31.1, 0).read(31.1, Duration.ofSeconds(50)).read(30.9, 10);

        assertThat(watching.alarm(HIGH).phase()).isEqualTo(Phase.QUIET);
        assertThat(watching.events()).isEmpty();
    }

    @Test
    void sixtySecondsAboveAreOne() {
        watching.read(31.1, 0).read(31.1, Duration.ofSeconds(50));
        assertThat(watching.alarm(HIGH).isActive()).isFalse();

        watching.read(31.1, 10);
        assertThat(watching.alarm(HIGH).isActive()).isTrue();
        assertThat(watching.alarm(HIGH).isSounding()).isTrue();
        assertThat(watching.events()).hasSize(1).allMatch(event -> event.at().equals(Watching.START.plusSeconds(60)));
    }

    @Test
    void withinTheDeadbandItStays() {
        raise().read(30.8, Duration.ofMinutes(10));

        assertThat(watching.alarm(HIGH).isActive()).isTrue();
        assertThat(watching.alarm(HIGH).activeMillis()).isEqualTo(600_000);
    }

    @Test
    void sixtySecondsBelowTheDeadbandClearIt() {
        raise().read(30.69, Duration.ofSeconds(60));
        assertThat(watching.alarm(HIGH).isActive()).isTrue();

        watching.read(30.69, 10);
        assertThat(watching.alarm(HIGH).isActive()).isFalse();
        assertThat(watching.alarm(HIGH).phase()).isEqualTo(Phase.OVER_UNSEEN);
        assertThat(watching.turns(HIGH)).containsExactly(RAISED, CLEARED);
    }

    @Test
    void aReadingWithinTheDeadbandBreaksTheOffDelay() {
        raise().read(30.69, Duration.ofSeconds(50)).read(30.8, 10).read(30.69, Duration.ofSeconds(60));

        assertThat(watching.alarm(HIGH).isActive()).isTrue();
    }

    @Test
    void exactlyTheLimitIsNotExceeded() {
        watching.read(31.0, Duration.ofMinutes(10));

        assertThat(watching.events()).isEmpty();
    }

    @Test
    void silenceNeitherCompletesNorEndsTheOnDelay() {
        watching.read(31.1, 0).read(31.1, Duration.ofSeconds(30)).silence(Duration.ofMinutes(5));
        assertThat(watching.turns(HIGH)).isEmpty();
        assertThat(watching.turns(SILENT)).containsExactly(RAISED);

        watching.read(31.1, 10).read(31.1, Duration.ofSeconds(20));
        assertThat(watching.turns(HIGH)).isEmpty();
        watching.read(31.1, 10);
        assertThat(watching.turns(HIGH)).containsExactly(RAISED);
        assertThat(watching.turns(SILENT)).containsExactly(RAISED, CLEARED);
    }

    @Test
    void timeTickingBetweenReadingsChangesNothing() {
        watching.read(31.1, 0);
        for (int i = 0; i < 6; i++) {
            watching.silence(Duration.ofSeconds(5)).read(31.1, 5);
        }
        assertThat(watching.turns(HIGH)).containsExactly(RAISED);
    }

    @Test
    void aSnoozedAlarmIsQuietButWrittenDownAndSoundsAgainAtTheEnd() {
        watching.snooze(HIGH, Duration.ofMinutes(10));
        raise();
        assertThat(watching.alarm(HIGH).isActive()).isTrue();
        assertThat(watching.alarm(HIGH).isSounding()).isFalse();
        assertThat(watching.turns(HIGH)).containsExactly(SNOOZED, RAISED);

        watching.read(31.1, Duration.ofMinutes(9));
        assertThat(watching.turns(HIGH)).containsExactly(SNOOZED, RAISED, SNOOZE_ENDED, ANNOUNCED_AGAIN);
        assertThat(watching.alarm(HIGH).isSounding()).isTrue();
    }

    @Test
    void anAlarmSeenAndSnoozedSoundsAgainTooIfItStillStands() {
        raise().acknowledge(HIGH).snooze(HIGH, Duration.ofMinutes(5)).read(31.1, Duration.ofMinutes(5));

        assertThat(watching.turns(HIGH)).containsExactly(RAISED, ACKNOWLEDGED, SNOOZED, SNOOZE_ENDED, ANNOUNCED_AGAIN);
        assertThat(watching.alarm(HIGH).isSounding()).isTrue();
    }

    @Test
    void aSnoozeOfNothingEndsWithoutASound() {
        watching.snooze(HIGH, Duration.ofMinutes(5)).read(27, Duration.ofMinutes(5));

        assertThat(watching.turns(HIGH)).containsExactly(SNOOZED, SNOOZE_ENDED);
        assertThat(watching.alarm(HIGH).phase()).isEqualTo(Phase.QUIET);
    }

    @Test
    void anAlarmNobodySeesEscalatesOnce() {
        raise().read(31.1, Duration.ofMinutes(30));

        assertThat(watching.turns(HIGH)).containsExactly(RAISED, ESCALATED);
        assertThat(watching.alarm(HIGH).isEscalated()).isTrue();
    }

    @Test
    void anAlarmSeenDoesNotEscalateAndIsOverWithoutMore() {
        raise().acknowledge(HIGH).acknowledge(HIGH).read(31.1, Duration.ofMinutes(30));
        watching.read(30, 10).read(30, Duration.ofSeconds(60));

        assertThat(watching.turns(HIGH)).containsExactly(RAISED, ACKNOWLEDGED, CLEARED);
        assertThat(watching.alarm(HIGH).phase()).isEqualTo(Phase.QUIET);
    }

    @Test
    void anAlarmOverUnseenStaysShownUntilSeenAndMayComeAgain() {
        raise().read(30, 10).read(30, Duration.ofSeconds(60));
        assertThat(watching.alarm(HIGH).phase()).isEqualTo(Phase.OVER_UNSEEN);
        raise().read(30, 10).read(30, Duration.ofSeconds(60)).acknowledge(HIGH);

        assertThat(watching.turns(HIGH)).containsExactly(RAISED, CLEARED, RAISED, CLEARED, ACKNOWLEDGED);
        assertThat(watching.alarm(HIGH).phase()).isEqualTo(Phase.QUIET);
    }

    private Watching raise() {
        return watching.read(31.1, 10).read(31.1, Duration.ofSeconds(60));
    }
}
