package org.moultwright.ui.deeds;

import java.util.UUID;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.workflow.Deed;

/**
 * A deed as the sheet lists it.
 *
 * @param id names the deed
 * @param when "3 May, 20:41"
 * @param words what was done
 * @param about the brood, or the room
 */
record DeedLine(UUID id, String when, String words, String about) {
    static DeedLine of(Deed.Summary deed, DayWords days) {
        return new DeedLine(
                deed.id(),
                days.shortDay(deed.doneAt()) + ", " + days.clock(deed.doneAt()),
                deed.words(),
                deed.brood().orElse(Texts.say("the room")));
    }
}
