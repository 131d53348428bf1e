package org.moultwright.ui.control;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Fields of forms: a small word over each, several in a row. */
public final class FormFields {
    private FormFields() {}

    /** The field in the size of body text. */
    public static <F extends EntryField> F quiet(F field, String width) {
        field.getStyleClass().remove("big-entry");
        field.getStyleClass().add(width);
        return field;
    }

    /** A field under its word. */
    public static VBox field(String caption, Node field) {
        Label word = Words.caption(caption);
        word.setMinWidth(Region.USE_PREF_SIZE);
        VBox named = new VBox(word, field);
        named.getStyleClass().add("named-field");
        return named;
    }

    /** Fields side by side. */
    public static HBox row(Node... fields) {
        Flow row = new Flow(fields);
        row.getStyleClass().add("form-row");
        return row;
    }
}
