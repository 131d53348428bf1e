package org.moultwright.ui.control;

import javafx.beans.binding.Bindings;
import javafx.geometry.Orientation;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Skin;
import javafx.scene.control.skin.ScrollPaneSkin;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Content that may be higher than its room. */
public final class Scrolled extends ScrollPane {
    /** Fields, of which the one that has the keyboard is in sight. */
    public Scrolled(Region fields) {
        super(fields);
        FocusInSight.of(this);
        setFocusTraversable(false);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        getStyleClass().add("scrolled");
        VBox.setVgrow(this, Priority.ALWAYS);
    }

    /** Words: while they are higher than their room the keyboard reaches them and arrow keys move them. */
    public Scrolled(String name, Region words) {
        this(words);
        setAccessibleText(name);
        focusTraversableProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> words.getHeight() > getViewportBounds().getHeight() + 1,
                        words.heightProperty(),
                        viewportBoundsProperty()));
    }

    /** A press beside the fields types nothing: the keyboard stays where it was. One on words that are moved takes it. */
    @Override
    public void requestFocus() {
        if (isFocusTraversable()) {
            super.requestFocus();
        }
    }

    @Override
    protected Skin<?> createDefaultSkin() {
        return new ScrolledSkin(this);
    }

    /** As wide as its content must be: nothing is scrolled sideways. */
    @Override
    protected double computeMinWidth(double height) {
        double bar = getSkin() instanceof ScrollPaneSkin skin
                ? skin.getVerticalScrollBar().prefWidth(-1)
                : 0;
        return getContent().minWidth(-1)
                + bar
                + getInsets().getLeft()
                + getInsets().getRight();
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }
}
