package org.moultwright.ui.round;

import java.util.Optional;
import java.util.function.IntConsumer;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/**
 * A tray of the round; pressed, its sheet is opened. Its parts are made once it has a tray: a list fills its height with
 * cells that have none.
 */
final class TrayCell extends ListCell<TrayLine> {
    private static final PseudoClass OPEN = PseudoClass.getPseudoClass("open");

    /** From this width on, in sizes of text, a tray is told in one line, so that more of them are in sight. */
    private static final double ONE_LINE_EMS = 28;

    private final Label tray = Words.styled("", "tray-code");
    private final Label place = Words.caption("");
    private final Label state = Words.styled("", "small");
    private final Label detail = Words.caption("");
    private final IntConsumer open;
    private Optional<Button> row = Optional.empty();

    /** @param open is given the position of the tray that was pressed */
    TrayCell(IntConsumer open) {
        this.open = open;
        getStyleClass().add("tray-cell");
        setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        setPrefWidth(0);
    }

    private Button row() {
        Button row = new Button();
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        detail.setWrapText(true);
        detail.setTextAlignment(TextAlignment.RIGHT);
        HBox content = new HBox();
        content.prefWidthProperty().bind(row.widthProperty().subtract(36));
        row.widthProperty()
                .map(width -> width.doubleValue() >= ONE_LINE_EMS * getFont().getSize())
                .subscribe(isOneLine -> {
                    content.setAlignment(isOneLine ? Pos.BASELINE_LEFT : Pos.TOP_LEFT);
                    content.getChildren().setAll(left(isOneLine), gap, right(isOneLine));
                });
        row.setGraphic(content);
        row.getStyleClass().setAll("tray-row");
        row.setMaxWidth(Double.MAX_VALUE);
        row.setFocusTraversable(false);
        row.setOnAction(event -> open.accept(getIndex()));
        return row;
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

    @Override
    protected void updateItem(@Nullable TrayLine line, boolean empty) {
        super.updateItem(line, empty);
        if (line == null || empty) {
            setGraphic(null);
        } else {
            Button shown = row.orElseGet(this::row);
            row = Optional.of(shown);
            setGraphic(shown);
            show(line, shown);
        }
    }

    private void show(TrayLine line, Button shown) {
        tray.setText(line.tray());
        place.setText(line.place());
        state.setText(line.state());
        for (Tone tone : Tone.values()) {
            state.getStyleClass().remove(tone.styleClass());
        }
        state.getStyleClass().add(line.stateTone().styleClass());
        detail.setText(line.detail());
        shown.pseudoClassStateChanged(OPEN, line.isOpen());
        shown.setAccessibleText(Texts.say("tray {0}, {1}, {2}", line.tray(), line.state(), line.detail()));
    }
}
