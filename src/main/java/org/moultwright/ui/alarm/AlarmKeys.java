package org.moultwright.ui.alarm;

import java.time.Duration;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** The keys that answer an alarm on every screen, single keys for a hand in a glove. */
public final class AlarmKeys {
    static final String SEEN = "F6";
    static final String SHORT = "F7";
    static final String LONG = "F8";
    static final Duration SHORT_QUIET = Duration.ofMinutes(15);
    static final Duration LONG_QUIET = Duration.ofMinutes(60);

    private AlarmKeys() {}

    /** Answers an alarm if this is such a key and there is one; whether it was. */
    public static boolean pressed(KeyEvent event, AlarmViewModel model) {
        if (!model.wantsEyes()) {
            return false;
        }
        if (event.getCode() == KeyCode.F6) {
            model.acknowledge();
        } else if (event.getCode() == KeyCode.F7) {
            model.snooze(SHORT_QUIET);
        } else if (event.getCode() == KeyCode.F8) {
            model.snooze(LONG_QUIET);
        } else {
            return false;
        }
        return true;
    }
}
