package org.moultwright.ui.control;

import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.Ikon;
import org.kordamp.ikonli.javafx.FontIcon;

/** What a screen shows before there is anything to show: an icon, a sentence that teaches, a way on. */
public final class EmptyState extends VBox {
    public EmptyState(Ikon icon, String sentence, Button... actions) {
        getStyleClass().add("empty-state");
        getChildren().addAll(FontIcon.of(icon), Words.wrapped(Words.plain(sentence)));
        getChildren().addAll(actions);
    }
}
