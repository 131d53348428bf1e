package org.moultwright.ui.potting;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.Words;

/** Fields of the bench's forms: a small word over each, several in a row. */
final class FormFields {
    private FormFields() {}

    /** The field in the size of body text. */
    static <F extends EntryField> F quiet(F field, String width) {
        field.getStyleClass().remove("big-entry");
        field.getStyleClass().add(width);
        return field;
    }

    static VBox field(String caption, Node field) {
        Label word = Words.caption(caption);
        word.setMinWidth(Region.USE_PREF_SIZE);
        VBox named = new VBox(word, field);
        named.getStyleClass().add("named-field");
        return named;
    }

    static HBox row(Node... fields) {
        HBox row = new HBox(fields);
        row.getStyleClass().add("form-row");
        return row;
    }
}
