package org.moultwright.ui.control;

import javafx.beans.binding.Bindings;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Content that may be higher than its room. While it is, the keyboard reaches it and arrow keys move it. */
public final class Scrolled extends ScrollPane {
    public Scrolled(String name, Region content) {
        super(content);
        setFitToWidth(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setAccessibleText(name);
        getStyleClass().add("scrolled");
        focusTraversableProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> content.getHeight() > getViewportBounds().getHeight() + 1,
                        content.heightProperty(),
                        viewportBoundsProperty()));
        VBox.setVgrow(this, Priority.ALWAYS);
    }
}
