package org.moultwright.ui.settings;

import javafx.scene.Node;
import org.kordamp.ikonli.Ikon;
import org.kordamp.ikonli.materialdesign2.MaterialDesignC;
import org.moultwright.ui.shell.Screen;

/** The keeper's choices, as a screen of the frame. */
public final class SettingsScreen implements Screen {
    private final SettingsView view;

    public SettingsScreen(SettingsViewModel model) {
        this.view = new SettingsView(model);
    }

    @Override
    public String id() {
        return "settings";
    }

    @Override
    public String word() {
        return "Settings";
    }

    @Override
    public Ikon icon() {
        return MaterialDesignC.COG_OUTLINE;
    }

    @Override
    public Node node() {
        return view;
    }
}
