package org.moultwright.boot.command;

import java.io.PrintWriter;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.TypeConversionException;

/**
 * The command line as a whole. Exit codes: 0 done, 1 the input or state is at fault, 2 wrong usage.
 */
public final class Commands {
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
                .addSubcommand(new TakeInCommand())
                .addSubcommand(new ExportCommand())
                .addSubcommand(new LogCommand())
                .addSubcommand(new ReadingsCommand())
                .addSubcommand(new AccuracyCommand())
                .addSubcommand(new TimingsCommand())
                .addSubcommand(new CheckStoreCommand())
                .addSubcommand(new BackupCommand())
                .addSubcommand(new RestoreCommand())
                .addSubcommand(new LabelsCommand())
                .addSubcommand(new ClimateCommand());
        line.registerConverter(Instant.class, Commands::instant);
        line.registerConverter(Duration.class, Commands::duration);
        line.setOut(out);
        line.setErr(err);
        line.setExecutionExceptionHandler(atFault());
        return line.execute(arguments);
    }

    private static Instant instant(String text) {
        try {
            return OffsetDateTime.parse(text).toInstant();
        } catch (DateTimeException e) {
            throw new TypeConversionException("'" + text + "' is no instant such as 2026-04-09T19:00:00Z");
        }
    }

    /** ISO 8601, or its short form without the leading letters: 10m, 30s. */
    private static Duration duration(String text) {
        boolean isWhole = text.toUpperCase(Locale.ROOT).startsWith("P");
        try {
            return Duration.parse(isWhole ? text : "PT" + text);
        } catch (DateTimeException e) {
            throw new TypeConversionException("'" + text + "' is no duration such as PT10M, 10m or 30s");
        }
    }

    private static IExecutionExceptionHandler atFault() {
        return (fault, line, result) -> {
            if (!ExitCode.isExpected(fault)) {
                throw fault;
            }
            line.getErr().println(fault.getMessage());
            return ExitCode.AT_FAULT;
        };
    }
}
