package org.moultwright.ui.control;

import javafx.scene.control.Label;
import javafx.scene.control.skin.LabelSkin;

/**
 * Words that are never cut: short ones stay in one line, long ones break their lines where there is too little room.
 *
 * <p>Its least width says how far a row may squeeze it, its least height how much room its lines take.
 */
final class Wording extends Label {
    /** In place of the toolkit's own word for a label: see the style sheet. */
    static final String STYLE = "wording";

    /** Up to this many of its own letter sizes words stay in one line. */
    private static final double WHOLE_EMS = 10;

    Wording(String text) {
        super(text);
        getStyleClass().setAll(STYLE);
        setWrapText(true);
        // Given one on screen instead, it would be styled anew.
        setSkin(new LabelSkin(this));
    }

    @Override
    protected double computeMinWidth(double height) {
        double edges = getInsets().getLeft() + getInsets().getRight();
        return isWrapText() && !isEmpty()
                ? Math.min(prefWidth(-1), WHOLE_EMS * getFont().getSize() + edges)
                : super.computeMinWidth(height);
    }

    @Override
    protected double computeMinHeight(double width) {
        return isWrapText() && !isEmpty() ? prefHeight(width) : super.computeMinHeight(width);
    }

    private boolean isEmpty() {
        return getText() == null || getText().isEmpty();
    }
}
