package org.moultwright.ui.control;

import javafx.scene.control.Label;

/** Labels in the few kinds of type the workbench knows. They break their lines rather than lose a word. */
public final class Words {
    private Words() {}

    public static Label plain(String text) {
        return styled(text);
    }

    public static Label strong(String text) {
        return styled(text, "strong");
    }

    public static Label muted(String text) {
        return styled(text, "muted");
    }

    public static Label caption(String text) {
        return styled(text, "caption");
    }

    public static Label cardTitle(String text) {
        return styled(text, "card-title");
    }

    /** A label that breaks its lines instead of cutting them. */
    public static Label wrapped(Label label) {
        label.setWrapText(true);
        label.setMinHeight(Label.USE_PREF_SIZE);
        return label;
    }

    /** A label that is never cut. */
    public static Label whole(Label label) {
        label.setMinWidth(Label.USE_PREF_SIZE);
        return label;
    }

    public static Label styled(String text, String... styleClasses) {
        Label label = new Wording(text);
        label.getStyleClass().addAll(styleClasses);
        return label;
    }

    /** Sets words that were made here in another kind of type. */
    public static void restyle(Label words, String... styleClasses) {
        words.getStyleClass().setAll(styleClasses);
        words.getStyleClass().add(0, Wording.STYLE);
    }
}
