package org.moultwright.ui.shell;

import org.moultwright.ui.control.Tone;

/**
 * Something the keeper should know, whatever screen is open.
 *
 * @param tone how urgent
 * @param sentence what has happened
 * @param remedy what to do about it, possibly empty
 * @param leadsToDeeds whether more of it is to be seen in the list of what was written down last
 */
public record Notice(Tone tone, String sentence, String remedy, boolean leadsToDeeds) {
    public Notice(Tone tone, String sentence, String remedy) {
        this(tone, sentence, remedy, false);
    }
}
