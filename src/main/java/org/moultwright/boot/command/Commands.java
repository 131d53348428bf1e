package org.moultwright.boot.command;

import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Locale;
import org.moultwright.workflow.AdvisedException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;

/**
 * The command line as a whole. Exit codes: 0 done, 1 the input or state is at fault, 2 wrong usage.
 */
public final class Commands {
    private static final int AT_FAULT = 1;

    private Commands() {}

    /**
     * Runs what the arguments ask for.
     *
     * @param root the command without a name, which opens the workbench
     * @return the exit code
     */
    public static int run(Object root, PrintWriter out, PrintWriter err, String... arguments) {
        CommandLine line = new CommandLine(root)
                .addSubcommand(new ForecastCommand())
                .addSubcommand(new ImportCommand())
                .addSubcommand(new ExportCommand())
                .addSubcommand(new LogCommand())
                .addSubcommand(new ReadingsCommand())
                .addSubcommand(new CheckStoreCommand())
                .addSubcommand(new BackupCommand())
                .addSubcommand(new RestoreCommand())
                .addSubcommand(new LabelsCommand())
                .addSubcommand(new ClimateCommand());
        line.registerConverter(Instant.class, text -> OffsetDateTime.parse(text).toInstant());
        line.registerConverter(Duration.class, Commands::duration);
        line.setOut(out);
        line.setErr(err);
        line.setExecutionExceptionHandler(atFault());
        return line.execute(arguments);
    }

    /** ISO 8601, or its short form without the leading letters: 10m, 30s. */
    private static Duration duration(String text) {
        boolean isWhole = text.toUpperCase(Locale.ROOT).startsWith("P");
        return Duration.parse(isWhole ? text : "PT" + text);
    }

    /** Expected faults have a sentence; anything else is a fault of the program and shows its trace. */
    private static IExecutionExceptionHandler atFault() {
        return (fault, line, result) -> {
            boolean expected = fault instanceof Refusal
                    || fault instanceof AdvisedException
                    || fault instanceof UncheckedIOException
                    || fault instanceof IllegalArgumentException;
            if (!expected) {
                throw fault;
            }
            line.getErr().println(fault.getMessage());
            return AT_FAULT;
        };
    }
}
