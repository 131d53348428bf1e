package org.moultwright.ui.control;

import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** What stands above every screen: its title, a quiet line beside it, and what can be done here. */
public final class PageHeader extends HBox {
    private final Label subtitle = Words.wrapped(Words.styled("", "page-subtitle"));

    public PageHeader(String title, Node... actions) {
        Label heading = Words.styled(title, "page-title");
        heading.setMinWidth(Region.USE_PREF_SIZE);
        Region gap = new Region();
        setHgrow(gap, Priority.ALWAYS);
        HBox right = new HBox(actions);
        right.getStyleClass().add("page-actions");
        right.setMinWidth(Region.USE_PREF_SIZE);
        getStyleClass().add("page-header");
        getChildren().addAll(heading, subtitle, gap, right);
    }

    public StringProperty subtitleProperty() {
        return subtitle.textProperty();
    }
}
