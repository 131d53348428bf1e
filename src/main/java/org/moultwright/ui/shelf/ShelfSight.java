package org.moultwright.ui.shelf;

import java.util.Set;
import java.util.stream.Collectors;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import org.moultwright.ui.control.Focus;

/** The rows of a list that are wholly in sight. */
record ShelfSight(Set<Integer> rows) {
    static ShelfSight of(ListView<?> list) {
        Bounds window = list.localToScene(list.getLayoutBounds());
        return new ShelfSight(list.lookupAll(".list-cell").stream()
                // A list keeps cells it measures with, or may need again, where they are not seen.
                .filter(node -> node instanceof ListCell<?> cell
                        && !cell.isEmpty()
                        && Focus.isShown(cell)
                        && isInside(cell, window))
                .map(node -> ((ListCell<?>) node).getIndex())
                .collect(Collectors.toSet()));
    }

    boolean shows(int row) {
        return rows.contains(row);
    }

    private static boolean isInside(Node cell, Bounds window) {
        Bounds bounds = cell.localToScene(cell.getLayoutBounds());
        return bounds.getMinY() >= window.getMinY() - 1 && bounds.getMaxY() <= window.getMaxY() + 1;
    }
}
