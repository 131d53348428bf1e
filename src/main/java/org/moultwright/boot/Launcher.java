package org.moultwright.boot;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.moultwright.boot.command.Commands;
import org.moultwright.boot.command.ExitCode;

/**
 * The first class to run. It does not extend the toolkit's application class, so that the program
 * starts from a plain class path.
 */
public final class Launcher {
    private Launcher() {}

    public static void main(String[] arguments) {
        // The desk speaks English, also where the toolkit writes for itself: months in calendars, menus of fields.
        Locale.setDefault(Locale.UK);
        PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int code = run(new OpenWorkbench(Desktop::refuse), out, err, arguments);
        out.flush();
        System.exit(code);
    }

    /** Opens the desk, or runs the command that is named; the exit code. */
    static int run(OpenWorkbench desk, PrintWriter out, PrintWriter err, String... arguments) {
        return desk.takes(arguments) ? ExitCode.of(desk, err) : Commands.run(desk, out, err, arguments);
    }
}
