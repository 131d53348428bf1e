package org.moultwright.ui.forecast;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableObjectValue;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.chart.TenthsChart;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.Em;
import org.moultwright.ui.control.EmptyState;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.control.WholeColumns;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.theme.Palette;

/** Lays out how good the dates were: a table of events, and of the chosen one where the truths fell. */
final class AccuracyView extends VBox {
    private static final List<String> TITLES = List.of(
            Texts.say("event"),
            Texts.say("happened"),
            Texts.say("forecasts"),
            Texts.say("days off"),
            Texts.say("on average"),
            "CRPS",
            Texts.say("in 80 %"));
    private static final String MEANING = Texts.say(
            "Each forecast kept before an event of a completed brood, against the day it happened, as "
                    + "the looks on both sides bracket it. Happened: in how many trays. Days off: how far the "
                    + "middle was from it. On average: whether early or late. CRPS: the same for the whole "
                    + "window, in days; less is better. In 80 %: how many fell within their 80 % window; 8 in 10 should.");
    private static final String BARS =
            Texts.say("Where the day fell in what was held possible. Good forecasts fill all tenths alike; nine "
                    + "of ten bars end in the pale band. Tall ends: windows too narrow. Tall middle: too wide. "
                    + "One side: early or late. The band counts happenings, since forecasts of one are early or "
                    + "late together.");

    private final TableView<ScoreLine> table;

    AccuracyView(AccuracyViewModel model, ObservableObjectValue<Palette> palette) {
        PageHeader header = new PageHeader(
                Texts.say("How good the dates were"), Buttons.secondary(Texts.say("Back"), model::close));
        header.subtitleProperty().set(Texts.say("forecasts of completed broods against what happened"));
        Em type = new Em();
        table = table(model, type);
        Label told = Words.wrapped(Words.styled("", "strong"));
        told.textProperty().bind(model.toldProperty());
        told.managedProperty().bind(told.textProperty().isNotEmpty());
        Card figures =
                Card.titled(Texts.say("Event by event"), told, table, Words.wrapped(Words.caption(MEANING)), type);
        Card tenths = tenths(model, palette);
        Columns columns = new Columns(figures, tenths);
        Columns.setHgrow(figures, Priority.ALWAYS);
        Columns.setHgrow(tenths, Priority.ALWAYS);
        columns.getStyleClass().add("card-columns");
        EmptyState teaching = new EmptyState(Sign.ACCURACY, "");
        Label sentence = (Label) teaching.getChildren().get(1);
        sentence.textProperty().bind(model.toldProperty());
        Card empty = new Card(teaching);
        show(columns, true, model);
        show(empty, false, model);
        setVgrow(columns, Priority.ALWAYS);
        setVgrow(empty, Priority.ALWAYS);
        getStyleClass().add("page");
        getChildren().addAll(header, columns, empty);
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                model.close();
                event.consume();
            }
        });
    }

    void takeFocus() {
        table.requestFocus();
    }

    private static void show(Node part, boolean withLines, AccuracyViewModel model) {
        part.visibleProperty().bind(withLines ? Bindings.isNotEmpty(model.lines()) : Bindings.isEmpty(model.lines()));
        part.managedProperty().bind(part.visibleProperty());
    }

    private static Card tenths(AccuracyViewModel model, ObservableObjectValue<Palette> palette) {
        Label title = Words.cardTitle("");
        title.textProperty()
                .bind(model.chosenProperty()
                        .map(line -> line.map(ScoreLine::event).orElse("")));
        TenthsChart chart = new TenthsChart(palette);
        chart.shownProperty().bind(model.chosenProperty().map(line -> line.map(ScoreLine::tenths)));
        VBox.setVgrow(chart, Priority.ALWAYS);
        return new Card(title, chart, Words.wrapped(Words.caption(BARS)));
    }

    private static TableView<ScoreLine> table(AccuracyViewModel model, Em type) {
        TableView<ScoreLine> table = new TableView<>(model.lines());
        table.getStyleClass().add("bare");
        table.setAccessibleText(Texts.say("how good the dates of each event were"));
        for (int column = 0; column < TITLES.size(); column++) {
            table.getColumns().add(column(column, type));
        }
        WholeColumns.of(table, type);
        VBox.setVgrow(table, Priority.ALWAYS);
        table.getSelectionModel()
                .selectedItemProperty()
                .addListener((observed, before, now) -> Optional.ofNullable(now)
                        .ifPresent(line -> model.chosenProperty().set(Optional.of(line))));
        model.chosenProperty()
                .addListener((observed, before, now) ->
                        now.ifPresent(line -> table.getSelectionModel().select(line)));
        model.chosenProperty().get().ifPresent(line -> table.getSelectionModel().select(line));
        return table;
    }

    private static TableColumn<ScoreLine, String> column(int number, Em type) {
        TableColumn<ScoreLine, String> column = new TableColumn<>(TITLES.get(number));
        column.setCellValueFactory(
                row -> new ReadOnlyStringWrapper(row.getValue().cells().get(number)));
        column.setSortable(false);
        column.setReorderable(false);
        WholeColumns.atLeast(column, type.times(number == 0 ? 10.667 : 5.467));
        String kind = number == 0 ? "words" : "number";
        column.getStyleClass().add(kind);
        column.setCellFactory(shown -> new FigureCell(kind));
        return column;
    }

    /** Figures stand under each other. */
    private static final class FigureCell extends TableCell<ScoreLine, String> {
        FigureCell(String kind) {
            getStyleClass().add(kind);
        }

        @Override
        protected void updateItem(String figure, boolean empty) {
            super.updateItem(figure, empty);
            setText(empty ? "" : figure);
        }
    }
}
