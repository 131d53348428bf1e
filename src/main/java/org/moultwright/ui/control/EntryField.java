package org.moultwright.ui.control;

import java.util.regex.Pattern;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.TextFormatter;
import javafx.scene.layout.VBox;

/**
 * A field that takes only what may be typed there, with room beneath for the sentence that says what is
 * wrong. While there is nothing to say it takes no room.
 */
public class EntryField extends VBox {
    private static final String PROBLEM_CLASS = "has-problem";

    private final TextField input = new TextField();
    private final StringProperty problem = new SimpleStringProperty("");

    /**
     * @param name what a screen reader calls the field
     * @param typable what the text may be at any moment of typing
     */
    public EntryField(String name, Pattern typable) {
        input.setAccessibleText(name);
        input.setTextFormatter(new TextFormatter<>(
                change -> typable.matcher(change.getControlNewText()).matches() ? change : null));
        problem.addListener((observed, before, now) -> {
            if (!now.isEmpty()) {
                sayBeneath();
            }
            mark(now);
        });
        getStyleClass().addAll("entry", "big-entry");
        getChildren().add(input);
    }

    /** The field itself, for focus and keys. */
    public final TextField input() {
        return input;
    }

    public final StringProperty textProperty() {
        return input.textProperty();
    }

    /** What is wrong with the entry, in a sentence; empty when nothing is. */
    public final StringProperty problemProperty() {
        return problem;
    }

    /** Marks the entry as wrong, where the sentence stands beside for several of them; empty takes the mark away. */
    public final void mark(String sentence) {
        getStyleClass().remove(PROBLEM_CLASS);
        if (!sentence.isEmpty()) {
            getStyleClass().add(PROBLEM_CLASS);
        }
        input.setAccessibleHelp(sentence);
    }

    /** The words beneath are made for the first problem; most fields never have one. */
    private void sayBeneath() {
        if (getChildren().size() > 1) {
            return;
        }
        Label beneath = Words.wrapped(Words.styled("", "problem"));
        beneath.textProperty().bind(problem);
        beneath.managedProperty().bind(problem.isNotEmpty());
        beneath.visibleProperty().bind(beneath.managedProperty());
        getChildren().add(beneath);
    }
}
