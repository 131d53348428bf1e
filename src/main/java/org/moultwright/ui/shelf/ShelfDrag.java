package org.moultwright.ui.shelf;

import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.DataFormat;
import javafx.scene.input.DragEvent;
import javafx.scene.input.Dragboard;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.TransferMode;

/**
 * Carries a container to another place by hand. It can be let go anywhere on the shelf: it comes into what is under it, or
 * the nearest around that can hold it, and where nothing can, a sentence says so.
 */
final class ShelfDrag {
    static final PseudoClass OVER = PseudoClass.getPseudoClass("drop-here");
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
        cell.setOnDragDone(event -> {
            if (event.getTransferMode() == null) {
                carried(event).ifPresent(code -> model.letGo(code, Optional.empty()));
            }
        });
    }

    /** Lets a container be taken by this card of the cell, which is that of {@code container} now. */
    void takes(Node card, Supplier<String> container) {
        card.addEventHandler(MouseEvent.MOUSE_PRESSED, event -> pressed = container.get());
    }

    /**
     * Lets containers be let go over a cell.
     *
     * @param cards those in the cell now, by the codes of their containers
     * @param frames what is drawn around them, the outermost first
     */
    void over(Node cell, Map<String, Node> cards, Map<String, Node> frames) {
        cell.setOnDragOver(event -> carried(event).ifPresent(code -> {
            event.acceptTransferModes(TransferMode.MOVE);
            model.carryOver(code, under(place(event), cards, frames));
            event.consume();
        }));
        cell.setOnDragExited(event -> carried(event).ifPresent(code -> model.carryOver(code, Optional.empty())));
        cell.setOnDragDropped(event -> carried(event).ifPresent(code -> {
            model.letGo(code, under(place(event), cards, frames));
            event.setDropCompleted(true);
            event.consume();
        }));
    }

    private static Point2D place(DragEvent event) {
        return new Point2D(event.getSceneX(), event.getSceneY());
    }

    /** The innermost of these at a place in the scene. */
    static Optional<String> under(Point2D place, Map<String, Node> cards, Map<String, Node> frames) {
        return Stream.concat(frames.entrySet().stream(), cards.entrySet().stream())
                .filter(part -> part.getValue().contains(part.getValue().sceneToLocal(place)))
                .map(Map.Entry::getKey)
                .reduce((outer, inner) -> inner);
    }

    private static Optional<String> carried(DragEvent event) {
        return Optional.ofNullable((String) event.getDragboard().getContent(CONTAINER));
    }
}
