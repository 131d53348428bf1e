package org.moultwright.ui.round;

import org.jspecify.annotations.Nullable;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Tone;

/**
 * A tray in the list of the round.
 *
 * @param tray its code
 * @param place where it stands
 * @param state done, saving, begun, now, due or late, in a word
 * @param stateTone how that is meant
 * @param detail what is in it
 * @param isOpen whether its sheet is the one shown
 */
record TrayLine(String tray, String place, String state, Tone stateTone, String detail, boolean isOpen) {
    /** Written out, as is the hash: what Java puts a record's own together of when it is first asked holds up a start. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof TrayLine line
                && tray.equals(line.tray)
                && place.equals(line.place)
                && state.equals(line.state)
                && stateTone == line.stateTone
                && detail.equals(line.detail)
                && isOpen == line.isOpen;
    }

    @Override
    public int hashCode() {
        return tray.hashCode();
    }

    /** The same tray while its sheet is on its way to the disk. */
    TrayLine saving() {
        return new TrayLine(tray, place, Texts.say("saving"), Tone.MUTED, detail, isOpen);
    }

    /** The same tray while a sheet for it is begun and not saved. */
    TrayLine begun() {
        return new TrayLine(tray, place, Texts.say("begun"), Tone.ACCENT, detail, isOpen);
    }
}
