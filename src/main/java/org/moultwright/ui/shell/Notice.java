package org.moultwright.ui.shell;

import java.util.Optional;
import org.moultwright.ui.control.Tone;

/**
 * Something the keeper should know, whatever screen is open.
 *
 * @param tone how urgent
 * @param sentence what has happened
 * @param remedy what to do about it, possibly empty
 * @param lead where more of it is to be seen
 */
public record Notice(Tone tone, String sentence, String remedy, Optional<Lead> lead) {
    public Notice(Tone tone, String sentence, String remedy) {
        this(tone, sentence, remedy, Optional.empty());
    }

    /** Where a notice leads. */
    public enum Lead {
        /** The list of what was written down last. */
        DEEDS
    }
}
