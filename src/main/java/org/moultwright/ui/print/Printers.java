package org.moultwright.ui.print;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javafx.print.Printer;
import org.moultwright.language.Texts;

/**
 * Whether this machine can print. Java hands pages to the printers of Linux through a command it names by its path
 * ({@code sun.print.PSPrinterJob} and {@code sun.print.UnixPrintJob} of JDK 17), after the toolkit was told that all went;
 * where there is none, the toolkit takes every page and nothing comes out.
 *
 * @param areThere whether any printer is set up
 * @param command what pages are handed to them with; empty where that is not done by a command
 */
public record Printers(BooleanSupplier areThere, Optional<Path> command) {
    public static final String NO_PRINTER =
            Texts.say("This machine has no printer. Set one up in the system's settings, or save it as PDF.");

    private static final Path LINUX_COMMAND = Path.of("/usr/bin/lpr");

    /** Those of this machine. */
    public static Printers ofThisMachine() {
        boolean isLinux = System.getProperty("os.name", "").equals("Linux");
        return new Printers(
                () -> !Printer.getAllPrinters().isEmpty(), isLinux ? Optional.of(LINUX_COMMAND) : Optional.empty());
    }

    /** Whether pages say which paper they want. Java leaves that out where it hands them over by the command. */
    public boolean areAskedForPaper() {
        return command.isEmpty();
    }

    /** Why nothing can be printed, and what to do; empty where it can. */
    public Optional<String> hindrance() {
        if (!areThere.getAsBoolean()) {
            return Optional.of(NO_PRINTER);
        }
        return command.filter(path -> !Files.isExecutable(path))
                .map(missing -> Texts.say(
                        "Nothing was sent: this machine has a printer, but not the command {0} that takes pages to it. "
                                + "Save it as PDF and print that, or have the command installed.",
                        missing));
    }
}
