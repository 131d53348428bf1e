package org.moultwright.ui.intake;

import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Words;
import org.moultwright.workflow.ColumnMeaning;
import org.moultwright.workflow.DateOrder;
import org.moultwright.workflow.ReadingFiles.Row;
import org.moultwright.workflow.ReadingMapping;

/** How a file is understood, and its first rows as they would be, changed by keys alone. */
final class MappingPane extends VBox {
    private static final int MOST_SKIPPED = 40;

    private final FileViewModel model;
    private final DayWords days;
    private final TextField probe;
    private final ChoiceBox<DateOrder> order;
    private final ChoiceBox<Integer> skipped;
    private final ChoiceBox<Character> delimiter;
    private final ChoiceBox<Charset> charset;
    private final GridPane rows = new GridPane();
    private final List<ChoiceBox<ColumnMeaning>> meanings = new ArrayList<>();
    private boolean isShowing;

    MappingPane(FileViewModel model, DayWords days) {
        this.model = model;
        this.days = days;
        probe = EntryForm.field(Texts.say("code of the probe"), "P-3", model.probeProperty());
        order = choice(Texts.say("order of the date"), List.of(DateOrder.values()), DateOrder::words, model::order);
        skipped = choice(
                Texts.say("rows before the first reading"),
                IntStream.rangeClosed(0, MOST_SKIPPED).boxed().toList(),
                String::valueOf,
                model::skip);
        delimiter = choice(
                Texts.say("what stands between cells"), TextKind.DELIMITERS, TextKind::words, chosen -> readAs());
        charset = choice(Texts.say("encoding of the text"), TextKind.CHARSETS, TextKind::words, chosen -> readAs());
        rows.getStyleClass().add("preview");
        getStyleClass().add("lines");
        ScrollPane scrolled = new ScrollPane(rows);
        scrolled.getStyleClass().add("scrolled");
        scrolled.setFocusTraversable(false);
        VBox.setVgrow(scrolled, Priority.ALWAYS);
        Card preview = Card.titled(Texts.say("The first rows, as they would be taken in"), scrolled);
        VBox.setVgrow(preview, Priority.ALWAYS);
        getChildren().addAll(new Card(fields()), preview);
        model.understoodProperty().addListener((observed, before, now) -> now.ifPresent(this::show));
        model.understoodProperty().get().ifPresent(this::show);
    }

    void takeFocus() {
        probe.requestFocus();
    }

    private Node fields() {
        ChoiceBox<String> where = new ChoiceBox<>(model.entry().containers());
        where.setMinWidth(Region.USE_PREF_SIZE);
        where.setAccessibleText(Texts.say("where the probe stood"));
        where.valueProperty().bindBidirectional(model.entry().containerProperty());
        TextField zone = EntryForm.field(Texts.say("zone of the file's clock"), "Europe/Lisbon", model.zoneProperty());
        zone.getStyleClass().remove("short-field");
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        grid.addRow(0, Words.plain(Texts.say("Probe")), line(probe, Words.muted(Texts.say("stood in")), where));
        grid.addRow(
                1, Words.plain(Texts.say("Its clock")), line(zone, Words.muted(Texts.say("writes dates as")), order));
        grid.addRow(
                2,
                Words.plain(Texts.say("The text")),
                line(
                        charset,
                        Words.muted(Texts.say("cells between")),
                        delimiter,
                        Words.muted(Texts.say("rows before the readings")),
                        skipped));
        return grid;
    }

    private static HBox line(Node... nodes) {
        Flow line = new Flow(nodes);
        line.getStyleClass().add("outcome-row");
        return line;
    }

    private void readAs() {
        model.readAs(charset.getValue(), delimiter.getValue());
    }

    /** What is shown asks for nothing: only the keeper's choices do. */
    private void show(FileViewModel.Understood understood) {
        isShowing = true;
        ReadingMapping mapping = understood.mapping();
        order.setValue(mapping.dates());
        skipped.setValue(Math.min(mapping.rowsBefore(), MOST_SKIPPED));
        delimiter.setValue(mapping.delimiter());
        charset.setValue(mapping.charset());
        if (meanings.size() != mapping.columns().size()) {
            layMeanings(mapping.columns().size());
        }
        for (int column = 0; column < meanings.size(); column++) {
            meanings.get(column).setValue(mapping.columns().get(column));
        }
        rows.getChildren().removeIf(node -> GridPane.getRowIndex(node) > 0);
        int line = 1;
        for (Row row : understood.rows()) {
            layRow(row, line++);
        }
        isShowing = false;
    }

    private void layMeanings(int columns) {
        rows.getChildren().clear();
        meanings.clear();
        rows.add(Words.caption(Texts.say("line")), 0, 0);
        rows.add(Words.caption(Texts.say("is understood as")), 1, 0);
        for (int column = 0; column < columns; column++) {
            int at = column;
            ChoiceBox<ColumnMeaning> meaning = choice(
                    Texts.say("meaning of column {0}", column + 1),
                    Arrays.asList(ColumnMeaning.values()),
                    ColumnMeaning::words,
                    chosen -> model.mean(at, chosen));
            meanings.add(meaning);
            rows.add(meaning, column + 2, 0);
        }
    }

    private void layRow(Row row, int line) {
        rows.add(Words.muted(String.valueOf(row.line())), 0, line);
        boolean isReading = row.reading().isPresent();
        Label understood = isReading ? Words.strong("") : Words.muted("");
        understood.setText(FileWords.understood(row, days));
        understood.getStyleClass().add(row.reason().isEmpty() ? "fine" : "problem");
        rows.add(understood, 1, line);
        for (int column = 0; column < Math.min(row.cells().size(), meanings.size()); column++) {
            rows.add(Words.plain(row.cells().get(column).strip()), column + 2, line);
        }
    }

    private <T> ChoiceBox<T> choice(String name, List<T> values, Function<T, String> words, Consumer<T> chosen) {
        ChoiceBox<T> choice = new ChoiceBox<>();
        choice.setMinWidth(Region.USE_PREF_SIZE);
        choice.getItems().setAll(values);
        choice.setAccessibleText(name);
        choice.setConverter(new StringConverter<>() {
            @Override
            public String toString(T value) {
                return value == null ? "" : words.apply(value);
            }

            @Override
            public T fromString(String written) {
                throw new UnsupportedOperationException("nothing is typed here");
            }
        });
        choice.valueProperty().addListener((observed, before, now) -> {
            if (!isShowing && now != null) {
                chosen.accept(now);
            }
        });
        return choice;
    }
}
