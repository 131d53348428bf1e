package org.moultwright.ui.control;

import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** A surface with a hairline round it, with or without a title. */
public final class Card extends VBox {
    public Card(Node... content) {
        super(content);
        getStyleClass().add("card");
    }

    public static Card titled(String title, Node... content) {
        Card card = new Card(content);
        card.getChildren().add(0, Words.cardTitle(title));
        return card;
    }

    /** This card without room between its edge and its content, for rows that reach the edge. */
    public Card flush() {
        getStyleClass().add("flush");
        return this;
    }
}
