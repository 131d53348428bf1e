package org.moultwright.device.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.moultwright.workflow.LineForms;
import org.moultwright.workflow.ProfileProblem;

class ProfileCheckTest {
    private static final LineProfiles BUNDLED = LineProfiles.bundled();

    @Test
    void aSoundTextMayBeUsed() {
        LineForms.Checked checked = BUNDLED.check(SoundText.LINES);
        assertThat(checked.code()).contains("sound");
        assertThat(checked.problems()).isEmpty();
    }

    @Test
    void aTestThatFailsIsToldWithItsLineAndWhatWasRead() {
        assertThat(BUNDLED.check(SoundText.lines("test: \"31\" -> 31", "test: \"27\" -> 26", "test: \"x\" -> ignored"))
                        .problems())
                .satisfiesExactly(
                        problem -> {
                            assertThat(problem.lineNumber()).isEqualTo(SoundText.LINES.size() + 2);
                            assertThat(problem.sentence())
                                    .contains("\"27\"")
                                    .contains("27.0")
                                    .contains("26.0");
                        },
                        problem -> assertThat(problem.sentence()).contains("unreadable"));
    }

    @Test
    void aCodeOfTheProgramMayNotBeUsedAgain() {
        List<String> text = SoundText.LINES.stream()
                .map(line -> line.startsWith("code") ? "code: plain-number" : line)
                .toList();
        assertThat(BUNDLED.check(text).problems())
                .extracting(ProfileProblem::sentence)
                .containsExactly("the code 'plain-number' is taken by another profile; choose another");
    }

    /** At the end of a line no character is looked at, so this one would go back and forth 3^20 times. */
    @Test
    void aPatternThatRunsAwayWhereThereIsNoCharacterIsRefused() {
        String runaway = "record: ^T(?<temperature>\\d)" + "(?:a?|b?|c?)".repeat(20) + "z$";
        List<String> text = SoundText.lines(runaway, "test: \"T2\" -> unreadable");
        LineForms.Checked checked = assertTimeoutPreemptively(Duration.ofSeconds(20), () -> BUNDLED.check(text));
        assertThat(checked.problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.sentence()).contains("take too long"));
    }

    @Test
    void anyTextIsCheckedWithoutACrash() {
        List<String> words = List.of(
                "code",
                "title",
                "port",
                "channel",
                "record",
                "test",
                "setting",
                "framing",
                "poll",
                "checksum",
                ": ",
                " ",
                "9600 8N1",
                "temperature C",
                "^(?<temperature>\\d+)$",
                "\"26\" -> 26",
                "address = 1 in 1..247",
                "modbus",
                "{address}",
                ", scale 0.1",
                "(",
                "[",
                "\\",
                "as s16 AB",
                "every 10 s",
                "-> fault",
                "with address=2",
                "|");
        for (int seed = 0; seed < 3000; seed++) {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder(random.nextBoolean() ? String.join("\n", SoundText.LINES) : "");
            for (int i = random.nextInt(25); i > 0; i--) {
                text.append(random.nextInt(4) == 0 ? "\n" : "").append(words.get(random.nextInt(words.size())));
            }
            LineForms.Checked checked = BUNDLED.check(text.toString().lines().toList());
            boolean isUsable = checked.problems().isEmpty();
            assertThat(isUsable && checked.code().isEmpty()).as("seed %d", seed).isFalse();
        }
    }
}
