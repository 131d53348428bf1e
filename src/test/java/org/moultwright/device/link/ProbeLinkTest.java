package org.moultwright.device.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.moultwright.device.DeviceException.Reason;
import org.moultwright.domain.Quality;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.ReadingLog.Logged;

class ProbeLinkTest {
    private static final String PLAIN = "plain-number";
    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final ScriptedWire wire = new ScriptedWire();

    @Test
    void linesBecomeReadingsWithTheirRawLine() {
        wire.says("6.0\r\n").says("26.1\r\n26.").says("2\r\n").run(PLAIN);
        assertThat(wire.temperaturesCelsius()).containsExactly(26.1, 26.2);
        assertThat(wire.heard).extracting(Logged::rawLine).containsExactly("26.1", "26.2");
        assertThat(wire.stateNames()).containsExactly("Connecting", "Live");
    }

    @Test
    void aLineNobodyCanReadIsAFaultWithItsRawLine() {
        wire.says("\r\nhello\r\n").run(PLAIN);
        assertThat(wire.heard).singleElement().satisfies(logged -> {
            assertThat(logged.rawLine()).isEqualTo("hello");
            assertThat(logged.reading().quality()).isEqualTo(Quality.FAULT);
        });
    }

    @Test
    void everyReadingHasAnInstantOfItsOwn() {
        wire.says("\n26.1\n26.2\n26.3\n").says("26.4\n").run(PLAIN);
        List<Instant> instants =
                wire.heard.stream().map(logged -> logged.reading().takenAt()).toList();
        assertThat(instants).hasSize(4).isSorted();
        assertThat(new HashSet<>(instants)).hasSize(4);
    }

    @Test
    void aPulledWireIsClosedAtOnceAndTriedAgainWithLongerWaits() {
        wire.says("\n26.1\n")
                .isPulledAndRefuses(Reason.MISSING, 5)
                .says("9\n26.2\n")
                .run(PLAIN);
        assertThat(wire.temperaturesCelsius()).containsExactly(26.1, 26.2);
        assertThat(wire.stateNames()).containsExactly("Connecting", "Live", "Lost", "Refused", "Connecting", "Live");
        assertThat(wire.waits.subList(0, 6))
                .containsExactly(
                        Duration.ofMillis(500),
                        Duration.ofSeconds(1),
                        Duration.ofSeconds(2),
                        Duration.ofSeconds(4),
                        Duration.ofSeconds(5),
                        Duration.ofSeconds(5));
        assertThat(wire.opened).isEqualTo(2);
        assertThat(wire.closed).isEqualTo(2);
    }

    @Test
    void theWaitStartsOverOnceSomethingWasHeard() {
        wire.isPulledAndRefuses(Reason.BUSY, 3)
                .says("\n26.1\n")
                .isPulled()
                .says("\r\n")
                .run(PLAIN);
        assertThat(wire.waits.subList(3, 5)).containsExactly(Duration.ofSeconds(4), Duration.ofMillis(500));
    }

    @Test
    void aRefusalSaysWhatToDo() {
        wire.isPulledAndRefuses(Reason.NO_PERMISSION, 1).says("\r\n").run(PLAIN);
        assertThat(wire.states)
                .filteredOn(LinkState.Refused.class::isInstance)
                .singleElement()
                .satisfies(state -> assertThat(((LinkState.Refused) state).sentence())
                        .contains("dialout")
                        .doesNotContain("DE-2"));
    }

    @Test
    void aSilentProbeIsToldOnceAndItsPortOpenedAgain() {
        wire.says("\n26.1\n")
                .isQuiet(MINUTE.plusSeconds(1))
                .isQuiet(MINUTE.multipliedBy(2).plusSeconds(1))
                .says("26.2\n")
                .run(PLAIN);
        assertThat(wire.stateNames()).containsExactly("Connecting", "Live", "Silent", "Live");
        assertThat(wire.opened).isEqualTo(3);
        assertThat(wire.temperaturesCelsius())
                .as("a line after silence is whole")
                .containsExactly(26.1, 26.2);
    }

    @Test
    void aRareSpeakerIsNotSilentOnceItsHabitIsKnown() {
        wire.says("\n26.1\n");
        for (int i = 0; i < 4; i++) {
            wire.isQuiet(MINUTE.multipliedBy(5)).says("26.1\n");
        }
        wire.run(PLAIN);
        assertThat(wire.heard).hasSize(5);
        assertThat(wire.stateNames()).containsExactly("Connecting", "Live", "Silent", "Live");
    }

    @Test
    void linesHeldUpOnTheirWayAreSuspect() {
        wire.says("\n26.1\n")
                .clockIsSet(MINUTE)
                .says("26.2\n26.3\n26.4\n")
                .says("26.5\n")
                .run(PLAIN);
        assertThat(wire.heard.stream().map(logged -> logged.reading().quality()))
                .containsExactly(Quality.GOOD, Quality.SUSPECT, Quality.SUSPECT, Quality.GOOD, Quality.GOOD);
    }

    @Test
    void anInstrumentIsAskedAtOnceAndThenAsOftenAsItsProfileSays() {
        wire.isQuiet(Duration.ofSeconds(1))
                .says("+26.1000C\r")
                .isQuiet(Duration.ofSeconds(8))
                .run("letter-poll every=3");
        assertThat(wire.asked).containsExactly("T\r", "T\r", "T\r", "T\r");
        assertThat(wire.temperaturesCelsius()).containsExactly(26.1);
    }

    @Test
    void anAnswerInPiecesIsJoinedAndAskingAnewStartsAnew() {
        wire.says("+26.1000C\r70%\r")
                .isQuiet(Duration.ofSeconds(3))
                .says("+26.2000C\r")
                .isQuiet(Duration.ofSeconds(3))
                .says("+26.3000C\r71%\r")
                .run("letter-poll-humidity every=3");
        assertThat(wire.heard.stream().map(logged -> logged.reading().quality()))
                .containsExactly(Quality.GOOD, Quality.FAULT, Quality.GOOD);
        assertThat(wire.heard.get(1).rawLine()).isEqualTo("+26.2000C");
    }

    @Test
    void anotherSensorAtThePortIsRefusedAndThePortTriedAgain() {
        wire.says("\nid=a T=26.1\n")
                .isPulled()
                .says("\nid=b T=31.0\n")
                .says("id=b T=31.1\n")
                .says("\nid=a T=26.2\n")
                .run("key-value");
        assertThat(wire.temperaturesCelsius()).containsExactly(26.1, 26.2);
        assertThat(wire.states)
                .anySatisfy(state -> assertThat(state)
                        .isInstanceOfSatisfying(
                                LinkState.Refused.class,
                                refused -> assertThat(refused.code()).isEqualTo("DE-6")));
    }

    @Test
    void aClockStepIsTold() {
        wire.says("\n26.1\n")
                .clockIsSet(Duration.ofHours(1))
                .says("26.2\n")
                .clockIsSet(Duration.ofHours(-1))
                .says("26.3\n")
                .clockIsSet(Duration.ofSeconds(2))
                .says("26.4\n")
                .run(PLAIN);
        assertThat(wire.steps).containsExactly(Duration.ofHours(1), Duration.ofHours(-1));
        assertThat(wire.heard).hasSize(4);
    }
}
