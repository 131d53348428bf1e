package org.moultwright.boot.command;

import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.concurrent.Callable;
import org.moultwright.workflow.AdvisedException;

/** How a command ends: 0 done, 1 the input or state is at fault, 2 wrong usage. */
public final class ExitCode {
    static final int AT_FAULT = 1;

    private ExitCode() {}

    /** Runs a command that has nothing to read from the command line, and says how it ended. */
    public static int of(Callable<Integer> command, PrintWriter err) {
        try {
            return command.call();
        } catch (Exception fault) {
            if (isExpected(fault)) {
                err.println(fault.getMessage());
            } else {
                fault.printStackTrace(err);
            }
            return AT_FAULT;
        }
    }

    /** Expected faults have a sentence; anything else is a fault of the program and shows its trace. */
    static boolean isExpected(Exception fault) {
        return fault instanceof Refusal
                || fault instanceof AdvisedException
                || fault instanceof UncheckedIOException
                || fault instanceof IllegalArgumentException;
    }
}
