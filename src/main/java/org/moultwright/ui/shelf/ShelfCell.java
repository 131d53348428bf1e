package org.moultwright.ui.shelf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.css.PseudoClass;
import javafx.geometry.Point2D;
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

    /** The frames drawn here, by the codes of their containers, the outermost first. */
    private final Map<String, Node> frames = new LinkedHashMap<>();

    private final HBox cards = new HBox();
    private final List<Node> cardEdges = new ArrayList<>();
    private Node framedCards = cards;

    ShelfCell(ShelfViewModel model) {
        this.model = model;
        this.drag = new ShelfDrag(model);
        drag.from(this, shown);
        drag.over(this, shown, frames);
        getStyleClass().add("shelf-cell");
        cards.getStyleClass().add("shelf-cards");
        setPrefWidth(0);
        model.focusProperty().addListener((observed, before, now) -> {
            mark(shown, before, ContainerCard.CURRENT, false);
            mark(shown, now, ContainerCard.CURRENT, true);
        });
        model.dropProperty().addListener((observed, before, now) -> {
            markDrop(before, false);
            markDrop(now, true);
        });
    }

    @Override
    protected Skin<?> createDefaultSkin() {
        return new RowSkin(this);
    }

    @Override
    protected void updateItem(@Nullable ShelfRow row, boolean empty) {
        super.updateItem(row, empty);
        // A card is used again for another container.
        markDrop(model.dropProperty().get(), false);
        shown.clear();
        frames.clear();
        setGraphic(row == null || empty ? null : framed(row));
        markDrop(model.dropProperty().get(), true);
    }

    /** The container at a place in the scene; none where the cell is elsewhere, or shows nothing. */
    Optional<String> under(Point2D place) {
        return isVisible() && contains(sceneToLocal(place)) ? ShelfDrag.under(place, shown, frames) : Optional.empty();
    }

    private void markDrop(String code, boolean isHere) {
        mark(shown, code, ShelfDrag.OVER, isHere);
        mark(frames, code, ShelfDrag.OVER, isHere);
    }

    /** Marks what is there and leaves it in place. */
    private static void mark(Map<String, Node> nodes, String code, PseudoClass mark, boolean isMarked) {
        Node node = nodes.get(code);
        if (node != null) {
            node.pseudoClassStateChanged(mark, isMarked);
        }
    }

    private Node framed(ShelfRow row) {
        List<Node> edges = row.part() == ShelfRow.Part.CARDS ? cardEdges : new ArrayList<>();
        int own = row.frames().size() - 1;
        Node framed =
                switch (row.part()) {
                    case HEAD -> framed(edge(head(row), own, "shelf-top", edges), own, edges);
                    case FOOT -> framed(foot(own, edges), own, edges);
                    case CARDS -> cards(row);
                };
        for (int depth = 0; depth <= own; depth++) {
            frames.put(row.frames().get(depth), edges.get(own - depth));
        }
        return framed;
    }

    /** @param edges the innermost first, to which those around the part are added */
    private static Node framed(Node part, int containersAround, List<Node> edges) {
        Node node = part;
        for (int depth = containersAround - 1; depth >= 0; depth--) {
            node = edge(node, depth, "shelf-sides", edges);
        }
        return node;
    }

    private void pressable(Node card, Supplier<String> container) {
        card.addEventHandler(
                MouseEvent.MOUSE_PRESSED, event -> model.focusProperty().set(container.get()));
        drag.takes(card, container);
    }

    private Node head(ShelfRow row) {
        Standing standing = row.cards().get(0);
        ContainerHead head = new ContainerHead(
                model.aired(standing), model.airedProperty().get().at(), isCurrent(standing));
        pressable(head, standing::code);
        shown.put(standing.code(), head);
        return head;
    }

    /** The frame's lower edge, and some room to what follows. */
    private static Node foot(int depth, List<Node> edges) {
        StackPane foot = new StackPane(edge(new Region(), depth, "shelf-bottom", edges));
        foot.getStyleClass().add("shelf-foot");
        return foot;
    }

    /** The cards stay while rows come and go in their cell; those that no container needs are not seen. */
    private Node cards(ShelfRow row) {
        if (cardEdges.size() != row.frames().size()) {
            cardEdges.clear();
            framedCards = framed(cards, row.frames().size(), cardEdges);
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
                card.show(model.aired(standing), model.vocabularyProperty().get(), isCurrent(standing));
                shown.put(standing.code(), card);
            } else {
                card.showNothing();
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

    private static Node edge(Node inside, int depth, String side, List<Node> edges) {
        StackPane edge = new StackPane(inside);
        edge.getStyleClass().addAll(EDGES[depth % 2], side);
        edges.add(edge);
        return edge;
    }
}
