package org.moultwright.ui.control;

import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import org.moultwright.language.Texts;

/** A key of the keyboard, drawn as one. */
public final class KeyCap extends Label {
    public KeyCap(String key) {
        super(key);
        getStyleClass().setAll(Wording.STYLE, "key-cap");
        setMinWidth(USE_PREF_SIZE);
        setAccessibleText(Texts.say("key {0}", key));
    }

    /** The key and what it does, side by side. */
    public static HBox hint(String key, String does) {
        HBox hint = new HBox(new KeyCap(key), Words.muted(does));
        hint.getStyleClass().add("key-hint");
        return hint;
    }
}
