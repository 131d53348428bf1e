package org.moultwright.ui.shelf;

import java.util.Map;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.input.DataFormat;
import javafx.scene.input.DragEvent;
import javafx.scene.input.Dragboard;
import javafx.scene.input.TransferMode;
import org.moultwright.workflow.Standing;

/** Carries a container to another place by hand. Where it cannot go it can be let go all the same, and is told why not. */
final class ShelfDrag {
    private static final PseudoClass OVER = PseudoClass.getPseudoClass("drop-here");
    private static final DataFormat CONTAINER = new DataFormat("application/x-moultwright-container");

    private final ShelfViewModel model;

    ShelfDrag(ShelfViewModel model) {
        this.model = model;
    }

    /** Lets a container be taken by its card, and others be let go on it. */
    void on(Node card, Standing standing) {
        card.setOnDragDetected(event -> {
            Dragboard board = card.startDragAndDrop(TransferMode.MOVE);
            board.setDragView(card.snapshot(null, null));
            board.setContent(Map.of(CONTAINER, standing.code()));
            event.consume();
        });
        card.setOnDragOver(event -> {
            if (carried(event).filter(code -> !code.equals(standing.code())).isPresent()) {
                event.acceptTransferModes(TransferMode.MOVE);
                card.pseudoClassStateChanged(OVER, true);
            }
            event.consume();
        });
        card.setOnDragExited(event -> card.pseudoClassStateChanged(OVER, false));
        card.setOnDragDropped(event -> {
            Optional<String> code = carried(event);
            code.ifPresent(container -> model.carry(container, standing.code()));
            event.setDropCompleted(code.isPresent());
            event.consume();
        });
    }

    private static Optional<String> carried(DragEvent event) {
        return Optional.ofNullable((String) event.getDragboard().getContent(CONTAINER));
    }
}
