package org.moultwright.ui.shelf;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ListCell;
import javafx.scene.control.Skin;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;
import org.moultwright.ui.control.RowSkin;
import org.moultwright.workflow.Standing;

/** A row of the shelf, inside as many frames as there are containers around it. */
final class ShelfCell extends ListCell<ShelfRow> {
    private static final String[] EDGES = {"shelf-frame", "shelf-frame-inner"};

    private final ShelfViewModel model;
    private final ShelfDrag drag;
    private final Map<String, Node> shown = new HashMap<>();
    private final HBox cards = new HBox();
    private Node framedCards = cards;
    private int cardsDepth;

    ShelfCell(ShelfViewModel model) {
        this.model = model;
        this.drag = new ShelfDrag(model);
        drag.from(this, shown);
        getStyleClass().add("shelf-cell");
        cards.getStyleClass().add("shelf-cards");
        setPrefWidth(0);
        model.focusProperty().addListener((observed, before, now) -> refocus(before, now));
    }

    @Override
    protected Skin<?> createDefaultSkin() {
        return new RowSkin(this);
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
        return switch (row.part()) {
            case HEAD -> framed(edge(head(row), row.depth(), "shelf-top"), row.depth());
            case FOOT -> framed(foot(row), row.depth());
            case CARDS -> cards(row);
        };
    }

    private static Node framed(Node part, int containersAround) {
        Node node = part;
        for (int depth = containersAround - 1; depth >= 0; depth--) {
            node = edge(node, depth, "shelf-sides");
        }
        return node;
    }

    private void pressable(Node card, Supplier<String> container) {
        card.addEventHandler(
                MouseEvent.MOUSE_PRESSED, event -> model.focusProperty().set(container.get()));
        drag.on(card, container);
    }

    private Node head(ShelfRow row) {
        Standing standing = row.cards().get(0);
        ContainerHead head = new ContainerHead(standing, model.shelfProperty().get(), isCurrent(standing));
        pressable(head, standing::code);
        shown.put(standing.code(), head);
        return head;
    }

    /** The frame's lower edge, and some room to what follows. */
    private static Node foot(ShelfRow row) {
        StackPane foot = new StackPane(edge(new Region(), row.depth(), "shelf-bottom"));
        foot.getStyleClass().add("shelf-foot");
        return foot;
    }

    /** The cards stay while rows come and go in their cell; those that no container needs are not seen. */
    private Node cards(ShelfRow row) {
        if (framedCards == cards || cardsDepth != row.depth()) {
            cardsDepth = row.depth();
            framedCards = framed(cards, cardsDepth);
        }
        while (cards.getChildren().size() < model.columnsProperty().get()) {
            cards.getChildren().add(card());
        }
        cards.getChildren()
                .remove(model.columnsProperty().get(), cards.getChildren().size());
        for (int column = 0; column < cards.getChildren().size(); column++) {
            ContainerCard card = (ContainerCard) cards.getChildren().get(column);
            boolean isNeeded = column < row.cards().size();
            card.setVisible(isNeeded);
            if (isNeeded) {
                Standing standing = row.cards().get(column);
                card.show(standing, model.vocabularyProperty().get(), isCurrent(standing));
                shown.put(standing.code(), card);
            }
        }
        return framedCards;
    }

    private ContainerCard card() {
        ContainerCard card = new ContainerCard();
        card.setPrefWidth(1);
        card.setMinWidth(0);
        card.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(card, Priority.ALWAYS);
        pressable(card, card::code);
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
