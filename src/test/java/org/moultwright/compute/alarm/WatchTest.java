package org.moultwright.compute.alarm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.moultwright.domain.AlarmKind.CONDENSATION;
import static org.moultwright.domain.AlarmKind.DRIFT;
import static org.moultwright.domain.AlarmKind.HIGH;
import static org.moultwright.domain.AlarmKind.LOW;
import static org.moultwright.domain.AlarmKind.RATE;
import static org.moultwright.domain.AlarmKind.SILENT;
import static org.moultwright.domain.AlarmKind.STUCK;
import static org.moultwright.domain.AlarmKind.VERY_HIGH;
import static org.moultwright.domain.AlarmTurn.CLEARED;
import static org.moultwright.domain.AlarmTurn.OUT_OF_SERVICE;
import static org.moultwright.domain.AlarmTurn.RAISED;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.domain.AlarmKind;

class WatchTest {
    private static final WatchSettings USUAL = AlarmRules.usual(Duration.ofSeconds(10), 0.1);

    private final Watching watching = new Watching(USUAL);

    @Test
    void theUsualRulesAreThoseWrittenDown() {
        assertThat(USUAL.rule(HIGH).orElseThrow().deadband()).isCloseTo(0.3, within(1e-12));
        assertThat(AlarmRules.usual(Duration.ofSeconds(10), 0.5)
                        .rule(HIGH)
                        .orElseThrow()
                        .deadband())
                .isEqualTo(1.5);
        assertThat(USUAL.rule(SILENT).orElseThrow().limit()).isEqualTo(60);
        assertThat(AlarmRules.usual(Duration.ofMinutes(5), 0.1)
                        .rule(SILENT)
                        .orElseThrow()
                        .limit())
                .isEqualTo(900);
        for (AlarmKind hard : new AlarmKind[] {VERY_HIGH, AlarmKind.VERY_LOW}) {
            assertThat(USUAL.rule(hard).orElseThrow().onDelay()).isLessThanOrEqualTo(Duration.ofSeconds(60));
        }
        assertThatIllegalArgumentException().isThrownBy(() -> AlarmRules.usual(Duration.ZERO, 0.1));
    }

    @Test
    void aProbeThatSaysTheSameForThreeHoursIsStuck() {
        watching.read(27.06, 0).read(27.06, Duration.ofHours(3));
        assertThat(watching.turns(STUCK)).isEmpty();
        watching.read(27.06, 10);
        assertThat(watching.turns(STUCK)).containsExactly(RAISED);

        watching.read(27.12, 10);
        assertThat(watching.turns(STUCK)).containsExactly(RAISED, CLEARED);
    }

    @Test
    void aDegreeMoreForGoodIsDriftAndIsOverOnceItIsAsUsualAgain() {
        read(27.4, 27, Duration.ofHours(30));
        assertThat(watching.events()).isEmpty();
        read(28.3, 27, Duration.ofMinutes(105));
        assertThat(watching.turns(DRIFT)).isEmpty();
        read(28.3, 27, Duration.ofMinutes(45));
        assertThat(watching.turns(DRIFT)).startsWith(RAISED).doesNotContain(CLEARED);

        read(27.4, 27, Duration.ofHours(2));
        assertThat(watching.turns(DRIFT)).startsWith(RAISED).endsWith(CLEARED);
    }

    @Test
    void aDriftTheKeeperAcceptsIsOverAndIsTheNewHabit() {
        read(27.4, 27, Duration.ofHours(30));
        read(28.3, 27, Duration.ofHours(4));
        watching.acknowledge(DRIFT).relearnHabit();
        read(28.3, 27, Duration.ofHours(30));
        assertThat(watching.turns(DRIFT)).startsWith(RAISED).endsWith(CLEARED);
        assertThat(watching.alarm(DRIFT).isActive()).isFalse();

        read(27.4, 27, Duration.ofHours(4));
        assertThat(watching.alarm(DRIFT).isActive()).isTrue();
    }

    @Test
    void aHabitFarOffItsSetPointIsDriftItself() {
        read(28.9, 27, Duration.ofHours(45));

        assertThat(watching.turns(DRIFT)).startsWith(RAISED).doesNotContain(CLEARED);
    }

    @Test
    void aNewSetPointIsNeitherRateNorDrift() {
        read(27, 27, Duration.ofHours(30));
        for (int minute = 0; minute < 40; minute++) {
            read(27 - 0.05 * minute, 25, Duration.ofMinutes(1));
        }
        read(25, 25, Duration.ofHours(6));

        assertThat(watching.events()).isEmpty();
    }

    @Test
    void aFallThatNobodySetIsRate() {
        read(27, 27, Duration.ofHours(4));
        for (int minute = 0; minute < 40; minute++) {
            read(27 - 0.09 * minute, 27, Duration.ofMinutes(1));
        }
        assertThat(watching.turns(RATE)).containsExactly(RAISED);
    }

    @ParameterizedTest
    @ValueSource(longs = {60, 300, 900})
    void sparseReadingsRaiseLimitsAllTheSame(long periodSeconds) {
        Watching sparse = new Watching(AlarmRules.usual(Duration.ofSeconds(periodSeconds), 0.1));
        for (int i = 0; i < 8; i++) {
            sparse.read(22, periodSeconds);
        }
        assertThat(sparse.turns(LOW)).startsWith(RAISED).doesNotContain(CLEARED);
        assertThat(sparse.turns(SILENT)).isEmpty();
    }

    @Test
    void aWallThatStaysWetIsCondensationAndOneWettedInPassingIsNot() {
        for (int i = 0; i < 170; i++) {
            watching.readWall(-0.5, 10);
        }
        watching.readWall(1.5, 10);
        assertThat(watching.turns(CONDENSATION)).isEmpty();

        for (int i = 0; i < 182; i++) {
            watching.readWall(-0.5, 10);
        }
        assertThat(watching.turns(CONDENSATION)).containsExactly(RAISED);
        for (int i = 0; i < 100; i++) {
            watching.readWall(0.4, 10);
        }
        assertThat(watching.alarm(CONDENSATION).isActive()).isTrue();
        for (int i = 0; i < 61; i++) {
            watching.readWall(1.5, 10);
        }
        assertThat(watching.turns(CONDENSATION)).containsExactly(RAISED, CLEARED);
    }

    @Test
    void aWallBelowTheDewPointByLessThanItsUncertaintyIsNoCondensation() {
        for (int i = 0; i < 400; i++) {
            watching.readWall(-0.2, 10);
        }
        assertThat(watching.turns(CONDENSATION)).isEmpty();
    }

    @Test
    void condensationTellsHowFarTheWallIsFromTheDewPoint() {
        for (int i = 0; i < 182; i++) {
            watching.readWall(-0.5, 10);
        }
        assertThat(watching.events())
                .filteredOn(event -> event.kind() == CONDENSATION)
                .singleElement()
                .satisfies(event -> assertThat(event.value()).isCloseTo(-0.5, within(1e-6)));
    }

    @Test
    void aKindTakenOutOfServiceIsWrittenDownAndForgotten() {
        watching.read(30, 10).read(30, Duration.ofMinutes(5));
        assertThat(watching.turns(HIGH)).containsExactly(RAISED);

        Watch.Step out = watching.watch().step(USUAL.without(HIGH), Observation.ofTime(watching.now(), 0));
        assertThat(out.events()).singleElement().satisfies(event -> {
            assertThat(event.kind()).isEqualTo(HIGH);
            assertThat(event.turn()).isEqualTo(OUT_OF_SERVICE);
        });
        assertThat(out.watch().alarm(HIGH)).isEqualTo(AlarmState.QUIET);
    }

    @Test
    void timeNeverRunsBackwardsInAWatch() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Observation(Watching.START, -1, Optional.empty()));
    }

    private void read(double celsius, double setPoint, Duration lasting) {
        for (long i = 0; i < lasting.toSeconds() / 10; i++) {
            // The last digit of a living probe never rests.
            watching.readSet(celsius + (i % 2) * 0.0625, setPoint, 10);
        }
    }
}
