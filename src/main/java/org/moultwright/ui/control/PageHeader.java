package org.moultwright.ui.control;

import javafx.beans.property.StringProperty;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** What stands above every screen: its title, a quiet line beside it, and what can be done here. */
public final class PageHeader extends Flow {
    private final Label subtitle = Words.wrapped(Words.styled("", "page-subtitle"));

    public PageHeader(String title, Node... actions) {
        Label heading = Words.styled(title, "page-title");
        // Words give way before what can be done here does.
        setHgrow(subtitle, Priority.SOMETIMES);
        Region gap = new Region();
        setHgrow(gap, Priority.ALWAYS);
        Flow right = new Flow(actions);
        right.getStyleClass().add("page-actions");
        getStyleClass().add("page-header");
        getChildren().addAll(heading, subtitle, gap, right);
    }

    public StringProperty subtitleProperty() {
        return subtitle.textProperty();
    }
}
