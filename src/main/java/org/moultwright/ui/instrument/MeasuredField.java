package org.moultwright.ui.instrument;

import org.moultwright.ui.control.EntryField;

/** The field of a measured number, in the size of body text. */
final class MeasuredField extends EntryField {
    MeasuredField(MeasuredEntry entry) {
        super(entry.name(), MeasuredEntry.TYPABLE);
        getStyleClass().remove("big-entry");
        getStyleClass().add("measured-field");
        textProperty().bindBidirectional(entry.textProperty());
        problemProperty().bind(entry.problemProperty());
        input().focusedProperty().addListener((observed, before, focused) -> {
            if (!focused) {
                entry.left();
            }
        });
    }
}
