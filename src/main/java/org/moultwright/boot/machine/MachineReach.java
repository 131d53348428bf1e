package org.moultwright.boot.machine;

import org.moultwright.domain.AlarmEntry;
import org.moultwright.language.Texts;
import org.moultwright.text.AlarmWords;
import org.moultwright.ui.alarm.AlarmReach;

/** Tone and notices of this machine. */
public final class MachineReach implements AlarmReach {
    private static final String TITLE = Texts.say("Moultwright: alarm");

    private final SoftTone tone = new SoftTone();
    private final DesktopNotice notice = DesktopNotice.ofMachine();

    @Override
    public void ring() {
        tone.play();
    }

    @Override
    public void notice(AlarmEntry entry) {
        if (AlarmCommand.CALLS.contains(entry.turn())) {
            notice.show(TITLE, AlarmWords.line(entry));
        }
    }

    @Override
    public String tryTone() {
        return tone.tryOut();
    }

    @Override
    public String tryNotice() {
        return notice.show(TITLE, Texts.say("This is only a test."))
                ? Texts.say("Shown by {0}. Look whether you see it.", notice.way())
                : Texts.say("This desktop shows no notices: there is no notify-send and no tray. The banner and the "
                        + "tone are all there is.");
    }
}
