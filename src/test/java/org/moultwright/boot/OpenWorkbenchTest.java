package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** What the desk is opened with, read shortly or by the whole command line. */
class OpenWorkbenchTest {
    private final OpenWorkbench desk = new OpenWorkbench((fault, opening) -> {});

    @Test
    void takesWhatADeskIsOpenedWithDayByDay() {
        assertThat(desk.takes("--demo")).isTrue();
        assertThat(desk.demo).isTrue();
    }

    /** Otherwise the keeper's own store would be opened in the demo room's place. */
    @Test
    void theDemoRoomOfAnotherDayIsTheDemoRoom() {
        String[] arguments = {"--demo", "--today", "2026-04-09T19:00:00Z"};
        assertThat(desk.takes(arguments)).isFalse();
        new CommandLine(desk).parseArgs(arguments);
        assertThat(desk.demo).isTrue();
        assertThat(desk.today).isEqualTo(Instant.parse("2026-04-09T19:00:00Z"));
    }

    @Test
    void whatIsLeftToTheCommandLineLeavesNothingBehind() {
        assertThat(desk.takes("--store", "--demo", "--today")).isFalse();
        assertThat(desk.demo).isFalse();
        assertThat(desk.store).isEqualTo(Optional.empty());
    }
}
