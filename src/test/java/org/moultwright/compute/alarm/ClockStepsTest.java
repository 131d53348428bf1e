package org.moultwright.compute.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.moultwright.domain.AlarmKind.HIGH;
import static org.moultwright.domain.AlarmKind.SILENT;
import static org.moultwright.domain.AlarmKind.VERY_HIGH;
import static org.moultwright.domain.AlarmTurn.ANNOUNCED_AGAIN;
import static org.moultwright.domain.AlarmTurn.CLEARED;
import static org.moultwright.domain.AlarmTurn.RAISED;
import static org.moultwright.domain.AlarmTurn.SNOOZED;
import static org.moultwright.domain.AlarmTurn.SNOOZE_ENDED;

import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ClockStepsTest {
    private static final WatchSettings USUAL = AlarmRules.usual(Duration.ofSeconds(10), 0.1);

    private final Watching watching = new Watching(USUAL);

    @ParameterizedTest
    @ValueSource(longs = {-86_400, -3600, -60, 60, 3600, 86_400})
    void aStepOfTheWallClockNeitherRaisesNorSwallowsAnAlarm(long stepSeconds) {
        Duration step = Duration.ofSeconds(stepSeconds);
        watching.read(27, Duration.ofMinutes(10)).setWallClock(step).read(27, Duration.ofMinutes(10));
        assertThat(watching.events()).isEmpty();

        watching.read(30, 10).read(30, Duration.ofMinutes(3)).setWallClock(step).read(30, Duration.ofSeconds(110));
        assertThat(watching.events()).isEmpty();
        watching.read(30, 10);
        assertThat(watching.turns(HIGH)).containsExactly(RAISED);
        watching.setWallClock(step).read(30, Duration.ofMinutes(1));
        assertThat(watching.alarm(HIGH).isActive()).isTrue();
    }

    @Test
    void aClockSetBackDoesNotProlongASnooze() {
        watching.read(30, 10)
                .read(30, Duration.ofMinutes(5))
                .snooze(HIGH, Duration.ofMinutes(30))
                .setWallClock(Duration.ofHours(-2))
                .read(30, Duration.ofMinutes(30));

        assertThat(watching.turns(HIGH)).containsExactly(RAISED, SNOOZED, SNOOZE_ENDED, ANNOUNCED_AGAIN);
    }

    @Test
    void aMachineThatSleptEndsASnoozeThatRanOutMeanwhile() {
        watching.read(30, 10)
                .read(30, Duration.ofMinutes(5))
                .snooze(HIGH, Duration.ofMinutes(30))
                .setWallClock(Duration.ofHours(8))
                .read(30, 10);

        assertThat(watching.turns(HIGH)).containsExactly(RAISED, SNOOZED, SNOOZE_ENDED, ANNOUNCED_AGAIN);
        assertThat(watching.turns(SILENT)).isEmpty();
    }

    @Test
    void whateverTheWallClockDoesTheSameAlarmsComeAtTheSameReadings() {
        for (int seed = 0; seed < 60; seed++) {
            assertThat(kindsAndTurns(seed, true)).as("seed %d", seed).isEqualTo(kindsAndTurns(seed, false));
        }
    }

    /** A random walk between very low and very high with gaps, under a wall clock that is set now and then. */
    private static List<String> kindsAndTurns(int seed, boolean isClockSet) {
        SplittableRandom random = new SplittableRandom(seed);
        Watching watching = new Watching(USUAL);
        double celsius = 27;
        for (int i = 0; i < 2000; i++) {
            celsius += 0.3 * random.nextGaussian() + 0.002 * (27 - celsius);
            long stepSeconds = random.nextLong(-100_000, 100_000);
            boolean steps = random.nextInt(50) == 0;
            if (isClockSet && steps) {
                watching.setWallClock(Duration.ofSeconds(stepSeconds));
            }
            watching.readSet(celsius, 27, random.nextInt(100) == 0 ? 600 : 10);
        }
        return watching.events().stream()
                .map(event -> event.kind() + " " + event.turn() + " " + event.value())
                .toList();
    }

    @Test
    void aGapDoesNotEndAStandingAlarm() {
        watching.read(32, 10)
                .read(32, Duration.ofSeconds(60))
                .silence(Duration.ofHours(2))
                .read(32, 10);

        assertThat(watching.turns(VERY_HIGH)).startsWith(RAISED).doesNotContain(CLEARED);
        assertThat(watching.alarm(VERY_HIGH).isActive()).isTrue();
    }

    @Test
    void shortGapsAreNoSilence() {
        for (int i = 0; i < 100; i++) {
            watching.read(27, 10).silence(Duration.ofSeconds(50));
        }
        assertThat(watching.events()).isEmpty();
    }
}
