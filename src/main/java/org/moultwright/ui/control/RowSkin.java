package org.moultwright.ui.control;

import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.ListCell;
import javafx.scene.control.SkinBase;

/**
 * A row of a list that is one node, its cell's graphic, over its whole width, and that is not chosen by pressing it. The
 * toolkit's own skin lays out words as well and listens for twenty things about them, in every cell a list fills its
 * height with.
 */
public final class RowSkin extends SkinBase<ListCell<?>> {
    public RowSkin(ListCell<?> cell) {
        super(cell);
        registerChangeListener(cell.graphicProperty(), changed -> show());
        show();
    }

    private void show() {
        Node row = getSkinnable().getGraphic();
        if (row == null) {
            getChildren().clear();
        } else {
            getChildren().setAll(row);
        }
    }

    /** What the row needs in that width, which may break its lines. */
    @Override
    protected double computePrefHeight(double width, double top, double right, double bottom, double left) {
        double inside = width < 0 ? width : width - left - right;
        return top
                + getChildren().stream()
                        .mapToDouble(row -> row.prefHeight(inside))
                        .sum()
                + bottom;
    }

    @Override
    protected double computeMinHeight(double width, double top, double right, double bottom, double left) {
        return computePrefHeight(width, top, right, bottom, left);
    }

    @Override
    protected void layoutChildren(double x, double y, double width, double height) {
        getChildren().forEach(row -> layoutInArea(row, x, y, width, height, 0, HPos.LEFT, VPos.CENTER));
    }
}
