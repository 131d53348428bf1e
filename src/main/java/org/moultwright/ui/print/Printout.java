package org.moultwright.ui.print;

import org.moultwright.language.Texts;

/**
 * What came of printing.
 *
 * @param isRefused whether it did not go, though the keeper wanted it
 * @param sentence for the keeper; empty where they thought better of it
 */
public record Printout(boolean isRefused, String sentence) {
    public static final Printout NO_PRINTER = new Printout(
            true, Texts.say("This machine has no printer. Set one up in the system's settings, or save it as PDF."));
    static final Printout REFUSED =
            new Printout(true, Texts.say("The printer refused. Look at its own messages, then print again."));
    public static final Printout PRINTED = new Printout(false, Texts.say("Printed."));
    static final Printout LET_BE = new Printout(false, "");
}
