package org.moultwright.ui.shell;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.HBox;

/** A row whose far end is left out, whole part by whole part, where there is no room for it. The first always stays. */
final class WhatFits extends HBox {
    /** So many parts are asked room for. */
    private static final int NEEDED = 3;

    @Override
    protected double computeMinWidth(double height) {
        List<Node> first = getManagedChildren().stream().limit(NEEDED).toList();
        return first.stream().mapToDouble(part -> snapSizeX(part.prefWidth(-1))).sum()
                + getSpacing() * Math.max(0, first.size() - 1);
    }

    @Override
    protected void layoutChildren() {
        double right = 0;
        boolean hasRoom = true;
        for (Node part : getManagedChildren()) {
            right += snapSizeX(part.prefWidth(-1));
            hasRoom = right <= getWidth() + 1 || part == getManagedChildren().get(0);
            part.setVisible(hasRoom);
            right += getSpacing();
        }
        super.layoutChildren();
    }
}
