package org.moultwright.ui.control;

import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.layout.VBox;

/**
 * Anything to be filled in, a choice or a whole row with its field, with room beneath for the sentence that says what is
 * wrong with it. While there is nothing to say it takes no room.
 */
public final class Refusable extends VBox {
    private final Beneath beneath;
    private final StringProperty problem = new SimpleStringProperty("");

    /**
     * @param whole what the sentence stands beneath
     * @param input what has the keyboard, within it
     */
    public Refusable(Node whole, Node input) {
        this.beneath = new Beneath(this, whole, input);
        problem.addListener((observed, before, now) -> {
            beneath.say(now);
            beneath.mark(now);
        });
    }

    /** What is wrong, in a sentence; empty when nothing is. */
    public StringProperty problemProperty() {
        return problem;
    }
}
