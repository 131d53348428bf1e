package org.moultwright.ui.forecast;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.ui.control.Words;

/** Lines one below the other, however many: only those in sight are made. They follow what they tell of. */
final class LineList extends ListView<LineList.Line> {
    /**
     * @param name what a screen reader calls the list
     * @param lines tells them anew
     * @param told what they tell of
     */
    LineList(String name, Supplier<Stream<Line>> lines, List<ObservableList<?>> told) {
        setAccessibleText(name);
        getStyleClass().addAll("bare", "line-list");
        setCellFactory(list -> new LineCell());
        VBox.setVgrow(this, Priority.ALWAYS);
        Runnable show = () -> getItems().setAll(lines.get().toList());
        told.forEach(what -> what.addListener((ListChangeListener<Object>) change -> show.run()));
        show.run();
    }

    /**
     * One of them.
     *
     * @param spoken it in words
     * @param node makes it
     */
    record Line(String spoken, Supplier<Node> node) {
        static Line sentence(String words) {
            return new Line(words, () -> Lines.sentence(words));
        }

        static Line caption(String words) {
            return new Line(words, () -> Words.wrapped(Words.caption(words)));
        }
    }

    private static final class LineCell extends ListCell<Line> {
        LineCell() {
            setPrefWidth(0);
            getStyleClass().add("line-cell");
        }

        @Override
        protected void updateItem(Line line, boolean empty) {
            super.updateItem(line, empty);
            setGraphic(empty ? null : line.node().get());
            setAccessibleText(empty ? "" : line.spoken());
        }
    }
}
