package org.moultwright.ui.shelf;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.EmptyState;
import org.moultwright.ui.control.Sign;

/** What stands where the cards would while there are none: why, and the way on. The keys of the shelf are those of its way on. */
final class EmptyShelf extends VBox {
    private final ShelfViewModel model;
    private final Button addFirst;
    private final Button toTonight;
    private final Node yet;
    private final Node then;

    EmptyShelf(ShelfViewModel model) {
        this.model = model;
        this.addFirst = Buttons.primary(Texts.say("Add the first container"), model::openAdd);
        this.toTonight = Buttons.primary(Texts.say("Back to tonight"), model::toTonight);
        this.yet = card(ShelfWords.EMPTY, addFirst);
        this.then = card(ShelfWords.NOTHING_THEN, toTonight);
        VBox.setVgrow(this, Priority.ALWAYS);
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ENTER) {
                wayOn().fire();
                event.consume();
            } else if (ShelfKeys.pressed(event, model)) {
                event.consume();
            }
        });
    }

    /** As it is on the day shown. */
    void show() {
        Node card = model.isPast() ? then : yet;
        if (!getChildren().equals(List.of(card))) {
            boolean hadKeyboard = addFirst.isFocused() || toTonight.isFocused();
            getChildren().setAll(card);
            if (hadKeyboard) {
                takeFocus();
            }
        }
    }

    void takeFocus() {
        wayOn().requestFocus();
    }

    private Button wayOn() {
        return model.isPast() ? toTonight : addFirst;
    }

    private static Node card(String why, Button wayOn) {
        Card card = new Card(new EmptyState(Sign.SHELF, why, wayOn));
        VBox.setVgrow(card, Priority.ALWAYS);
        return card;
    }
}
