package org.moultwright.boot.machine;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmTurn;
import org.moultwright.language.Texts;
import org.moultwright.text.AlarmWords;

/**
 * The keeper's own command for alarms, run by the machine's shell and not waited for. What happened is in its
 * environment, never in its words, so that no name of a container can become part of a command.
 *
 * @param words the command as the keeper wrote it
 */
public record AlarmCommand(String words) {
    /** Turns of an alarm that call for somebody. */
    static final Set<AlarmTurn> CALLS = Set.of(AlarmTurn.RAISED, AlarmTurn.ANNOUNCED_AGAIN, AlarmTurn.ESCALATED);

    /**
     * Runs it if an alarm begins, comes again after a quiet spell, or nobody has seen it for too long.
     *
     * @throws UncheckedIOException if there is no shell to run it
     */
    public void answer(AlarmEntry entry) {
        if (CALLS.contains(entry.turn())) {
            start(Map.of(
                    "MOULTWRIGHT_CONTAINER", entry.container(),
                    "MOULTWRIGHT_ALARM", entry.kind().key(),
                    "MOULTWRIGHT_TURN", entry.turn().key(),
                    "MOULTWRIGHT_AT", entry.at().toString(),
                    "MOULTWRIGHT_WORDS", AlarmWords.line(entry)));
        }
    }

    /**
     * Runs it once as it would be run at an alarm.
     *
     * @throws UncheckedIOException if there is no shell to run it
     */
    public void tryOut() {
        start(Map.of("MOULTWRIGHT_TURN", "test", "MOULTWRIGHT_WORDS", Texts.say("This is only a test.")));
    }

    private void start(Map<String, String> told) {
        boolean isWindows =
                System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");
        ProcessBuilder builder =
                new ProcessBuilder(isWindows ? List.of("cmd.exe", "/c", words) : List.of("/bin/sh", "-c", words));
        builder.environment().putAll(told);
        builder.redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD);
        try {
            builder.start();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
