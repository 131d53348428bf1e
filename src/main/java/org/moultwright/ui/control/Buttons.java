package org.moultwright.ui.control;

import javafx.scene.control.Button;

/** Buttons in the three weights the workbench knows. */
public final class Buttons {
    private Buttons() {}

    /** The one thing a screen is for. */
    public static Button primary(String word, Runnable action) {
        return styled(word, action, "primary");
    }

    /** Anything else that can be done. */
    public static Button secondary(String word, Runnable action) {
        return styled(word, action);
    }

    /** A quiet word that can be pressed. */
    public static Button plain(String word, Runnable action) {
        return styled(word, action, "plain");
    }

    private static Button styled(String word, Runnable action, String... styleClasses) {
        Button button = new Button(word);
        button.getStyleClass().addAll(styleClasses);
        button.setMinWidth(Button.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }
}
