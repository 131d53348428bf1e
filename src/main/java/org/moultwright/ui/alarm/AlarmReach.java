package org.moultwright.ui.alarm;

import org.moultwright.domain.AlarmEntry;
import org.moultwright.language.Texts;

/** How an alarm reaches somebody who does not look at the desk: by ear, and by the notices of the machine's desktop. */
public interface AlarmReach {
    /** Reaches nobody. */
    AlarmReach NOBODY = new AlarmReach() {
        @Override
        public void ring() {}

        @Override
        public void notice(AlarmEntry entry) {}

        @Override
        public String tryTone() {
            return Texts.say("This desk has no tone.");
        }

        @Override
        public String tryNotice() {
            return Texts.say("This desk shows no notices.");
        }
    };

    /** Plays the tone once and returns at once. */
    void ring();

    /** Shows a notice of an alarm that begins, comes again, or was seen by nobody for too long; returns at once. */
    void notice(AlarmEntry entry);

    /** Plays the tone once and waits; whether anything was played, in a sentence. */
    String tryTone();

    /** Shows a notice once; by which way, or that this machine has none, in a sentence. */
    String tryNotice();
}
