package org.moultwright.ui.shell;

import java.util.ArrayList;
import java.util.List;
import javafx.css.PseudoClass;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.HBox;

/**
 * Parts in the order of how much they matter. The needed ones always stand, on lines below where one has no room for
 * them; of the others those are left out, whole part by whole part, that the last line has no room for.
 */
final class WhatFits extends HBox {
    /** A part that begins a line. */
    private static final PseudoClass LEADING = PseudoClass.getPseudoClass("leading");

    private int needed;

    /** Shows these parts, the needed ones first. */
    void show(List<? extends Node> needed, List<? extends Node> others) {
        this.needed = needed.size();
        getChildren().setAll(needed);
        getChildren().addAll(others);
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computeMinWidth(double height) {
        return getManagedChildren().stream()
                .limit(needed)
                .mapToDouble(this::wide)
                .max()
                .orElse(0);
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected double computePrefHeight(double width) {
        Insets inner = getInsets();
        return inner.getTop() + inner.getBottom() + lines(width).size() * lineHeight();
    }

    @Override
    protected void layoutChildren() {
        List<List<Node>> lines = lines(getWidth());
        double high = lineHeight();
        double y = snapPositionY(Math.max(0, (getHeight() - lines.size() * high) / 2));
        getManagedChildren().forEach(part -> part.setVisible(false));
        for (List<Node> line : lines) {
            double x = 0;
            for (Node part : line) {
                part.pseudoClassStateChanged(LEADING, x == 0);
                part.setVisible(true);
                layoutInArea(
                        part,
                        x,
                        y,
                        wide(part),
                        high,
                        0,
                        getAlignment().getHpos(),
                        getAlignment().getVpos());
                x += wide(part) + getSpacing();
            }
            y += high;
        }
    }

    private List<List<Node>> lines(double width) {
        List<List<Node>> lines = new ArrayList<>(List.of(new ArrayList<>()));
        double right = 0;
        int position = 0;
        for (Node part : getManagedChildren()) {
            boolean hasRoom = width < 0 || right == 0 || right + wide(part) <= width + 1;
            if (!hasRoom && position >= needed) {
                return lines;
            }
            if (!hasRoom) {
                lines.add(new ArrayList<>());
                right = 0;
            }
            lines.get(lines.size() - 1).add(part);
            right += wide(part) + getSpacing();
            position++;
        }
        return lines;
    }

    private double lineHeight() {
        return getManagedChildren().stream()
                .mapToDouble(part -> snapSizeY(part.prefHeight(-1)))
                .max()
                .orElse(0);
    }

    private double wide(Node part) {
        return snapSizeX(part.prefWidth(-1));
    }
}
