package org.moultwright.ui.round;

import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** A tray of the round in the list; pressed, its sheet is opened. */
final class TrayRow extends Button {
    private static final PseudoClass OPEN = PseudoClass.getPseudoClass("open");

    /** From this width on, in sizes of text, a tray is told in one line, so that more of them are in sight. */
    private static final double ONE_LINE_EMS = 28;

    private final Label tray = Words.styled("", "tray-code");
    private final Label place = Words.caption("");
    private final Label state = Words.styled("", "small");
    private final Label detail = Words.caption("");

    TrayRow(Runnable open) {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        detail.setWrapText(true);
        detail.setTextAlignment(TextAlignment.RIGHT);
        HBox content = new HBox();
        content.prefWidthProperty().bind(widthProperty().subtract(36));
        widthProperty()
                .map(width -> width.doubleValue() >= ONE_LINE_EMS * getFont().getSize())
                .subscribe(isOneLine -> {
                    content.setAlignment(isOneLine ? Pos.BASELINE_LEFT : Pos.TOP_LEFT);
                    content.getChildren().setAll(left(isOneLine), gap, right(isOneLine));
                });
        setGraphic(content);
        getStyleClass().setAll("tray-row");
        setMaxWidth(Double.MAX_VALUE);
        setFocusTraversable(false);
        setOnAction(event -> open.run());
    }

    void show(TrayLine line) {
        tray.setText(line.tray());
        place.setText(line.place());
        state.setText(line.state());
        for (Tone tone : Tone.values()) {
            state.getStyleClass().remove(tone.styleClass());
        }
        state.getStyleClass().add(line.stateTone().styleClass());
        detail.setText(line.detail());
        pseudoClassStateChanged(OPEN, line.isOpen());
        setAccessibleText(Texts.say("tray {0}, {1}, {2}", line.tray(), line.state(), line.detail()));
    }

    private Pane left(boolean isOneLine) {
        Pane left = isOneLine ? line(tray, place) : new VBox(tray, place);
        left.setMinWidth(USE_PREF_SIZE);
        return left;
    }

    private Pane right(boolean isOneLine) {
        if (isOneLine) {
            return line(detail, state);
        }
        VBox right = new VBox(state, detail);
        right.setAlignment(Pos.TOP_RIGHT);
        return right;
    }

    private static HBox line(Label first, Label second) {
        HBox line = new HBox(first, second);
        line.getStyleClass().add("tray-line");
        return line;
    }
}
