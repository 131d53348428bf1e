package org.moultwright.ui.control;

import javafx.scene.control.Button;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.javafx.FontIcon;

/** What a screen shows before there is anything to show: an icon, a sentence that teaches, ways on. */
public final class EmptyState extends VBox {
    public EmptyState(Sign icon, String sentence, Button... actions) {
        getStyleClass().add("empty-state");
        setVgrow(this, Priority.ALWAYS);
        getChildren().addAll(FontIcon.of(icon), Words.wrapped(Words.plain(sentence)));
        if (actions.length > 0) {
            Flow row = new Flow(actions);
            row.getStyleClass().add("empty-actions");
            getChildren().add(row);
        }
    }
}
