package org.moultwright.ui.round;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.InvalidationListener;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Words;

/** The trays of the round in shelf order, with what is done and what is late. */
final class TrayListView extends VBox {
    private static final PseudoClass OPEN = PseudoClass.getPseudoClass("open");

    private final VBox rows = new VBox();

    /** What each of the rows says. */
    private final List<TrayLine> shown = new ArrayList<>();

    private final RoundViewModel model;

    TrayListView(RoundViewModel model) {
        this.model = model;
        Label pace = Words.wrapped(Words.caption(""));
        pace.textProperty().bind(model.paceProperty());
        pace.getStyleClass().add("tray-pace");
        VBox content = new VBox(rows, pace);
        ScrollPane scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        setVgrow(scroll, Priority.ALWAYS);
        getStyleClass().addAll("card", "flush", "tray-list");
        getChildren().add(scroll);
        model.lines().addListener((InvalidationListener) changed -> show());
        show();
    }

    /** Makes anew only the rows that say something else: from tray to tray two of them, of hundreds. */
    private void show() {
        List<TrayLine> lines = model.lines();
        for (int i = 0; i < lines.size(); i++) {
            if (i >= shown.size()) {
                shown.add(lines.get(i));
                rows.getChildren().add(row(i, lines.get(i)));
            } else if (!shown.get(i).equals(lines.get(i))) {
                shown.set(i, lines.get(i));
                rows.getChildren().set(i, row(i, lines.get(i)));
            }
        }
        shown.subList(lines.size(), shown.size()).clear();
        rows.getChildren().remove(lines.size(), rows.getChildren().size());
    }

    private Button row(int position, TrayLine line) {
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Label place = Words.caption(line.place());
        VBox left = new VBox(Words.styled(line.tray(), "tray-code"), place);
        VBox right = new VBox(
                Words.styled(line.state(), "small", line.stateTone().styleClass()), Words.caption(line.detail()));
        right.setAlignment(Pos.TOP_RIGHT);
        HBox content = new HBox(left, gap, right);
        Button row = new Button();
        row.setGraphic(content);
        row.getStyleClass().setAll("tray-row");
        row.setMaxWidth(Double.MAX_VALUE);
        content.prefWidthProperty().bind(row.widthProperty().subtract(36));
        row.setFocusTraversable(false);
        row.pseudoClassStateChanged(OPEN, line.isOpen());
        row.setAccessibleText(Texts.say("tray {0}, {1}, {2}", line.tray(), line.state(), line.detail()));
        row.setOnAction(event -> model.open(position));
        return row;
    }
}
