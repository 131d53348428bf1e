package org.moultwright.boot.command;

import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.moultwright.boot.machine.AlarmCommand;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.text.AlarmWords;
import org.moultwright.workflow.WatchListener;
import org.moultwright.workflow.WatchView;

/** Prints what the watch finds, a line for each, and runs the keeper's command where an alarm calls. */
final class AlarmLines implements WatchListener {
    private final PrintWriter err;
    private final Optional<AlarmCommand> command;
    private String said = "";

    AlarmLines(PrintWriter err, Optional<AlarmCommand> command) {
        this.err = err;
        this.command = command;
    }

    @Override
    public void turned(AlarmEntry entry) {
        tell("ALARM %s %s".formatted(entry.at(), AlarmWords.line(entry)));
        command.ifPresent(run -> run(run, entry));
    }

    /** Said once, until it is another fault or over. */
    @Override
    public void stands(WatchView view) {
        String fault = view.unwritten().map(Throwable::getMessage).orElse("");
        if (!fault.isEmpty() && !fault.equals(said)) {
            tell("Alarms cannot be written down, and are tried again: " + fault);
        }
        said = fault;
    }

    private void run(AlarmCommand command, AlarmEntry entry) {
        try {
            command.answer(entry);
        } catch (UncheckedIOException fault) {
            tell("The command for alarms could not be run: " + fault.getMessage());
        }
    }

    private void tell(String sentence) {
        err.println(sentence);
        err.flush();
    }
}
