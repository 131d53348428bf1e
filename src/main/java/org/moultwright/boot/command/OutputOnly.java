package org.moultwright.boot.command;

import java.io.PrintWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Where a command answers. */
@Command
class OutputOnly {
    @Spec(Spec.Target.MIXEE)
    CommandSpec command = CommandSpec.create();

    final PrintWriter out() {
        return command.commandLine().getOut();
    }

    final PrintWriter err() {
        return command.commandLine().getErr();
    }
}
