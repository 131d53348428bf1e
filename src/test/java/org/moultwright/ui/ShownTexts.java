package org.moultwright.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.moultwright.ui.shell.PageHost;

/** The texts of a view as they are laid out: their words, names for a screen reader, and whether they are all there. */
final class ShownTexts {
    private static final double TOLERANCE = 1.5;

    private ShownTexts() {}

    /** All nodes that are seen. */
    static List<Node> nodes(Parent root) {
        List<Node> all = new ArrayList<>();
        add(root, all);
        return all;
    }

    private static void add(Node node, List<Node> all) {
        if (!node.isVisible() || node.getOpacity() == 0) {
            return;
        }
        all.add(node);
        if (node instanceof Parent parent && !(node instanceof TextInputControl)) {
            parent.getChildrenUnmodifiable().forEach(child -> add(child, all));
        }
    }

    /** The words of a node: shown, prompted, and said by a screen reader. What a keeper typed is none. */
    static Stream<String> words(Node node) {
        List<String> words = new ArrayList<>();
        if (node instanceof Labeled labeled) {
            words.add(labeled.getText());
        } else if (node instanceof TextInputControl input) {
            words.add(input.getPromptText());
        } else if (node instanceof TextFlow flow) {
            // One sentence, however many parts of it are set apart.
            words.add(flow.getChildren().stream()
                    .filter(Text.class::isInstance)
                    .map(part -> ((Text) part).getText())
                    .collect(Collectors.joining()));
        } else if (node instanceof Text text && !isPart(text)) {
            words.add(text.getText());
        }
        words.add(node.getAccessibleText());
        words.add(node.getAccessibleHelp());
        words.add(node.getAccessibleRoleDescription());
        return words.stream().filter(said -> said != null && !said.isBlank());
    }

    private static boolean isPart(Text text) {
        return text.getParent() instanceof Labeled || text.getParent() instanceof TextFlow;
    }

    /** What is wrong with how a text is laid out; empty where nothing is. */
    static Optional<String> clipped(Node node, Parent root) {
        if (!(node instanceof Labeled labeled)
                || labeled.getText() == null
                || labeled.getText().isBlank()) {
            return Optional.empty();
        }
        Optional<Text> shown = labeled.getChildrenUnmodifiable().stream()
                .filter(Text.class::isInstance)
                .map(Text.class::cast)
                .filter(part -> part.isVisible() && part != labeled.getGraphic())
                .findFirst();
        if (shown.isEmpty()) {
            return Optional.empty();
        }
        Text text = shown.get();
        if (!text.getText().equals(labeled.getText())) {
            if (isToldBeside(labeled)) {
                return Optional.empty();
            }
            return Optional.of("shortened to '" + text.getText() + "'");
        }
        Bounds drawn = text.getBoundsInLocal();
        // A space at the end of a broken line is no letter.
        double wide =
                text.getWrappingWidth() > 0 ? Math.min(drawn.getWidth(), text.getWrappingWidth()) : drawn.getWidth();
        Bounds at = text.localToScene(new BoundingBox(drawn.getMinX(), drawn.getMinY(), wide, drawn.getHeight()));
        Node around = around(labeled, root);
        Bounds room = around.localToScene(around.getLayoutBounds());
        boolean isWithin = at.getMinX() >= room.getMinX() - TOLERANCE && at.getMaxX() <= room.getMaxX() + TOLERANCE;
        boolean isHigh = around != root || at.getMaxY() <= room.getMaxY() + TOLERANCE;
        return (isWithin && isHigh) || canBeScrolledTo(around)
                ? Optional.empty()
                : Optional.of("reaches out of " + around.getStyleClass() + " by "
                        + Math.round(Math.max(at.getMaxX() - room.getMaxX(), room.getMinX() - at.getMinX())));
    }

    /** What cuts a node off: the part of a scroll pane or list that is seen, or the window. */
    private static Node around(Node node, Parent root) {
        for (Node around = node.getParent(); around != null; around = around.getParent()) {
            if (around.getStyleClass().contains("viewport")
                    || around.getStyleClass().contains("clipped-container")) {
                return around;
            }
        }
        return root;
    }

    /** Whether a whole page must be moved sideways to be read. */
    static boolean isPageMovedSideways(Node node) {
        return node instanceof PageHost host
                && host.getContent().getLayoutBounds().getWidth()
                        > host.getViewportBounds().getWidth() + TOLERANCE;
    }

    private static boolean canBeScrolledTo(Node around) {
        boolean isPane = around.getParent() instanceof ScrollPane pane
                && pane.getHbarPolicy() != ScrollPane.ScrollBarPolicy.NEVER;
        return isPane
                || around.getParent().getChildrenUnmodifiable().stream()
                        .anyMatch(child -> child.isVisible()
                                && child instanceof ScrollBar bar
                                && bar.getOrientation() == Orientation.HORIZONTAL);
    }

    /** Whether a tooltip of the text, or of what it stands in, says all of it. */
    private static boolean isToldBeside(Labeled labeled) {
        for (Node part = labeled; part != null; part = part.getParent()) {
            boolean isTold = part instanceof Control control
                    && control.getTooltip() != null
                    && control.getTooltip().getText().contains(labeled.getText());
            if (isTold) {
                return true;
            }
        }
        return false;
    }

    /** Where a node is, for whoever looks for it. */
    static String place(Node node) {
        StringBuilder place = new StringBuilder();
        for (Node part = node; part != null && place.length() < 160; part = part.getParent()) {
            if (!part.getStyleClass().isEmpty()) {
                place.append(part == node ? "" : " < ").append(String.join(".", part.getStyleClass()));
            }
        }
        return place.toString();
    }
}
