package org.moultwright.ui.settings;

import java.util.function.UnaryOperator;
import javafx.scene.Node;
import org.moultwright.language.Texts;
import org.moultwright.language.Translations;
import org.moultwright.ui.alarm.AlarmReach;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.shell.ScreenName;

/** The keeper's choices, as a screen of the frame. */
public final class SettingsScreen implements Screen {
    public static final ScreenName NAME = new ScreenName("settings", Texts.say("Settings"), Sign.SETTINGS);

    private final SettingsView view;

    /**
     * @param reach tries the tone and the notice of alarms
     * @param tryCommand runs a command for alarms once and says how it ended
     * @param translations the languages there are
     */
    public SettingsScreen(
            SettingsViewModel model, AlarmReach reach, UnaryOperator<String> tryCommand, Translations translations) {
        this.view = new SettingsView(model, reach, tryCommand, translations);
    }

    @Override
    public ScreenName name() {
        return NAME;
    }

    @Override
    public Node node() {
        return view;
    }
}
