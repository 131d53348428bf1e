package org.moultwright.ui.control;

import javafx.scene.control.Button;

/** Buttons in the three weights the workbench knows. */
public final class Buttons {
    private static final String PRIMARY = "primary";
    private static final String TAKING = "taking";

    private Buttons() {}

    /** The one thing a screen is for; it takes what is filled in. */
    public static Button primary(String word, Runnable action) {
        return styled(word, action, PRIMARY);
    }

    /** Another way to take what is filled in. */
    public static Button taking(String word, Runnable action) {
        return styled(word, action, TAKING);
    }

    /** Anything else that can be done. */
    public static Button secondary(String word, Runnable action) {
        return styled(word, action);
    }

    /** A quiet word that can be pressed. */
    public static Button plain(String word, Runnable action) {
        return styled(word, action, "plain");
    }

    /** Whether it takes what is filled in. */
    static boolean takeEntries(Button button) {
        return button.getStyleClass().stream().anyMatch(name -> name.equals(PRIMARY) || name.equals(TAKING));
    }

    private static Button styled(String word, Runnable action, String... styleClasses) {
        Button button = new Button(word);
        button.getStyleClass().addAll(styleClasses);
        button.setMinWidth(Button.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }
}
