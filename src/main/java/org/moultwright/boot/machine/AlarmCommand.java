package org.moultwright.boot.machine;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
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
    private static final int SECONDS_TO_END = 5;

    /** Turns of an alarm that call for somebody. */
    static final Set<AlarmTurn> CALLS = Set.of(AlarmTurn.RAISED, AlarmTurn.ANNOUNCED_AGAIN, AlarmTurn.ESCALATED);

    /**
     * Runs it if an alarm begins, comes again after a quiet spell, or nobody has seen it for too long.
     *
     * @throws UncheckedIOException if there is no shell to run it
     */
    public void answer(AlarmEntry entry) {
        if (CALLS.contains(entry.turn())) {
            Process unused = start(Map.of(
                    "MOULTWRIGHT_CONTAINER", entry.container(),
                    "MOULTWRIGHT_ALARM", entry.kind().key(),
                    "MOULTWRIGHT_TURN", entry.turn().key(),
                    "MOULTWRIGHT_AT", entry.at().toString(),
                    "MOULTWRIGHT_WORDS", AlarmWords.line(entry)));
        }
    }

    /** Runs it once as it would be run at an alarm, and says in a sentence how it ended, if it ends soon. */
    public String tryOut() {
        try {
            Process tried =
                    start(Map.of("MOULTWRIGHT_TURN", "test", "MOULTWRIGHT_WORDS", Texts.say("This is only a test.")));
            if (!tried.waitFor(SECONDS_TO_END, TimeUnit.SECONDS)) {
                return Texts.say("It was started and still runs. Look whether what you expect has happened.");
            }
            return tried.exitValue() == 0
                    ? Texts.say("It ran and ended well. Look whether what you expect has happened.")
                    : Texts.say("It failed: it ended with {0}. Try it in a terminal.", tried.exitValue());
        } catch (UncheckedIOException fault) {
            return Texts.say("It could not be started: {0}", fault.getMessage());
        } catch (InterruptedException closing) {
            Thread.currentThread().interrupt();
            return "";
        }
    }

    private Process start(Map<String, String> told) {
        boolean isWindows =
                System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");
        ProcessBuilder builder =
                new ProcessBuilder(isWindows ? List.of("cmd.exe", "/c", words) : List.of("/bin/sh", "-c", words));
        builder.environment().putAll(told);
        builder.redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD);
        try {
            return builder.start();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
