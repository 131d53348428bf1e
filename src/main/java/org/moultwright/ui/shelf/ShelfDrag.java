package org.moultwright.ui.shelf;

import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.input.DataFormat;
import javafx.scene.input.DragEvent;
import javafx.scene.input.Dragboard;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.TransferMode;

/** Carries a container to another place by hand. Where it cannot go it can be let go all the same, and is told why not. */
final class ShelfDrag {
    private static final PseudoClass OVER = PseudoClass.getPseudoClass("drop-here");
    private static final DataFormat CONTAINER = new DataFormat("application/x-moultwright-container");

    private final ShelfViewModel model;
    private String pressed = "";

    ShelfDrag(ShelfViewModel model) {
        this.model = model;
    }

    /**
     * Lets containers be taken by their cards in a cell of the shelf. The list may lay out its cells anew while the button
     * is held, and the card that was pressed with them, so that it is the cell that hears of the drag.
     *
     * @param cards those in the cell now, by the codes of their containers
     */
    void from(Node cell, Map<String, Node> cards) {
        cell.addEventFilter(MouseEvent.MOUSE_PRESSED, event -> pressed = "");
        cell.setOnDragDetected(event -> {
            Node card = cards.get(pressed);
            if (card != null) {
                Dragboard board = cell.startDragAndDrop(TransferMode.MOVE);
                board.setDragView(card.snapshot(null, null));
                board.setContent(Map.of(CONTAINER, pressed));
                event.consume();
            }
        });
    }

    /**
     * Lets a container be taken by this card of the cell, and others be let go on it.
     *
     * @param container says whose card it is now
     */
    void on(Node card, Supplier<String> container) {
        card.addEventHandler(MouseEvent.MOUSE_PRESSED, event -> pressed = container.get());
        card.setOnDragOver(event -> {
            if (carried(event).filter(code -> !code.equals(container.get())).isPresent()) {
                event.acceptTransferModes(TransferMode.MOVE);
                card.pseudoClassStateChanged(OVER, true);
            }
            event.consume();
        });
        card.setOnDragExited(event -> card.pseudoClassStateChanged(OVER, false));
        card.setOnDragDropped(event -> {
            Optional<String> code = carried(event);
            code.ifPresent(taken -> model.carry(taken, container.get()));
            event.setDropCompleted(code.isPresent());
            event.consume();
        });
    }

    private static Optional<String> carried(DragEvent event) {
        return Optional.ofNullable((String) event.getDragboard().getContent(CONTAINER));
    }
}
