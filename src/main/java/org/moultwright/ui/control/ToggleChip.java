package org.moultwright.ui.control;

import javafx.scene.control.ToggleButton;

/** A word that is on or off. */
public final class ToggleChip extends ToggleButton {
    public ToggleChip(String word) {
        super(word);
        getStyleClass().setAll("toggle-chip");
        setMinWidth(USE_PREF_SIZE);
        setAccessibleText(word);
    }
}
