package org.moultwright.ui.control;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What stands beneath a field: the sentence that says what is wrong, which takes no room while there is nothing to say. */
final class Beneath {
    private static final String PROBLEM_CLASS = "has-problem";

    private static final String FIELD_CLASS = "entry";

    private final VBox field;
    private final Node typedIn;

    /**
     * @param field to hold the input and the sentence
     * @param typedIn what has the keyboard, in the input or the input itself
     */
    Beneath(VBox field, Node input, Node typedIn) {
        this.field = field;
        this.typedIn = typedIn;
        field.getStyleClass().add(FIELD_CLASS);
        field.getChildren().add(input);
    }

    /** What is typed in, with what stands beneath it, or beneath the row it is in. */
    static Node whole(Node typedIn) {
        Node whole = typedIn;
        for (Node around = typedIn.getParent(); around != null; around = around.getParent()) {
            if (around instanceof VBox field && field.getStyleClass().contains(FIELD_CLASS)) {
                whole = field;
            }
        }
        return whole;
    }

    /** The words are made for the first sentence; most fields never have one. */
    void say(String sentence) {
        if (field.getChildren().size() == 1) {
            if (sentence.isEmpty()) {
                return;
            }
            Label words = Words.wrapped(Words.styled("", "problem"));
            // As wide as the field: a wider one would push the row out of its place.
            words.setPrefWidth(0);
            words.setMaxWidth(Double.MAX_VALUE);
            field.getChildren().add(words);
        }
        Label words = (Label) field.getChildren().get(1);
        words.setText(sentence);
        words.setManaged(!sentence.isEmpty());
        words.setVisible(words.isManaged());
    }

    /** Marks the entry as wrong and tells a screen reader why; empty takes the mark away. */
    void mark(String wrong) {
        field.getStyleClass().remove(PROBLEM_CLASS);
        if (!wrong.isEmpty()) {
            field.getStyleClass().add(PROBLEM_CLASS);
        }
        typedIn.setAccessibleHelp(wrong);
    }
}
