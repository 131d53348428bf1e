package org.moultwright.ui.shelf;

import java.util.HashMap;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.ListCell;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;
import org.moultwright.workflow.Standing;

/** A row of the shelf, inside as many frames as there are containers around it. */
final class ShelfCell extends ListCell<ShelfRow> {
    private static final String[] EDGES = {"shelf-frame", "shelf-frame-inner"};

    private final ShelfViewModel model;
    private final ShelfDrag drag;
    private final Map<String, Node> shown = new HashMap<>();

    ShelfCell(ShelfViewModel model) {
        this.model = model;
        this.drag = new ShelfDrag(model);
        drag.from(this, shown);
        getStyleClass().add("shelf-cell");
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        setPrefWidth(0);
        model.focusProperty().addListener((observed, before, now) -> refocus(before, now));
    }

    @Override
    protected void updateItem(@Nullable ShelfRow row, boolean empty) {
        super.updateItem(row, empty);
        shown.clear();
        setGraphic(row == null || empty ? null : framed(row));
    }

    /** Marks the card and leaves it in place. */
    private void refocus(String before, String now) {
        mark(before, false);
        mark(now, true);
    }

    private void mark(String code, boolean isCurrent) {
        Node card = shown.get(code);
        if (card != null) {
            card.pseudoClassStateChanged(ContainerCard.CURRENT, isCurrent);
        }
    }

    private Node framed(ShelfRow row) {
        Node node =
                switch (row.part()) {
                    case HEAD -> edge(head(row), row.depth(), "shelf-top");
                    case FOOT -> foot(row);
                    case CARDS -> cards(row);
                };
        for (int depth = row.depth() - 1; depth >= 0; depth--) {
            node = edge(node, depth, "shelf-sides");
        }
        return node;
    }

    private void pressable(Node card, Standing standing) {
        card.addEventHandler(
                MouseEvent.MOUSE_PRESSED, event -> model.focusProperty().set(standing.code()));
        drag.on(card, standing);
    }

    private Node head(ShelfRow row) {
        Standing standing = row.cards().get(0);
        ContainerHead head = new ContainerHead(standing, model.shelfProperty().get(), isCurrent(standing));
        pressable(head, standing);
        shown.put(standing.code(), head);
        return head;
    }

    /** The frame's lower edge, and some room to what follows. */
    private static Node foot(ShelfRow row) {
        StackPane foot = new StackPane(edge(new Region(), row.depth(), "shelf-bottom"));
        foot.getStyleClass().add("shelf-foot");
        return foot;
    }

    private Node cards(ShelfRow row) {
        HBox cards = new HBox();
        cards.getStyleClass().add("shelf-cards");
        int columns = model.columnsProperty().get();
        for (int column = 0; column < columns; column++) {
            Region card = column < row.cards().size() ? card(row.cards().get(column)) : new Region();
            card.setPrefWidth(1);
            card.setMinWidth(0);
            card.setMaxWidth(Double.MAX_VALUE);
            HBox.setHgrow(card, Priority.ALWAYS);
            cards.getChildren().add(card);
        }
        return cards;
    }

    private Region card(Standing standing) {
        ContainerCard card =
                new ContainerCard(standing, model.vocabularyProperty().get(), isCurrent(standing));
        pressable(card, standing);
        shown.put(standing.code(), card);
        return card;
    }

    private boolean isCurrent(Standing standing) {
        return standing.code().equals(model.focusProperty().get());
    }

    private static Node edge(Node inside, int depth, String side) {
        StackPane edge = new StackPane(inside);
        edge.getStyleClass().addAll(EDGES[depth % 2], side);
        return edge;
    }
}
