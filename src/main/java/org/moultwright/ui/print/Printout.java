package org.moultwright.ui.print;

import org.moultwright.language.Texts;

/**
 * What came of printing.
 *
 * @param isRefused whether it did not go, though the keeper wanted it
 * @param sentence for the keeper; empty where they thought better of it
 */
public record Printout(boolean isRefused, String sentence) {
    static final Printout REFUSED =
            new Printout(true, Texts.say("The printer refused. Look at its own messages, then print again."));
    public static final Printout PRINTED = new Printout(false, Texts.say("Sent to the printer."));
    static final Printout LET_BE = new Printout(false, "");

    /** It cannot be done on this machine. */
    public static Printout hindered(String why) {
        return new Printout(true, why);
    }
}
