package org.moultwright.ui.forecast;

import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.Words;

/** The lanes in words: the tray chosen, the yield and what it was learned from, and what is to be done. */
final class InWords {

    private InWords() {}

    static Columns of(ForecastViewModel model) {
        return Columns.even(chosen(model), yields(model), toDo(model));
    }

    private static Card chosen(ForecastViewModel model) {
        VBox lines = new VBox();
        lines.getStyleClass().add("lines");
        Label title = Words.wrapped(Words.cardTitle(""));
        Runnable show = () -> {
            title.setText(model.chosenProperty().get().map(LaneLine::sentence).orElse(""));
            lines.getChildren()
                    .setAll(model.chosenProperty().get().stream()
                            .flatMap(line -> line.latestFirst().stream())
                            .flatMap(windows -> windows.lines().stream().map(words -> row(windows, words)))
                            .toList());
        };
        model.chosenProperty().addListener((observed, before, now) -> show.run());
        show.run();
        return new Card(title, new Scrolled(Texts.say("windows of the chosen tray"), lines));
    }

    private static Node row(LaneLine.Windows windows, String words) {
        HBox row = new HBox(Swatch.of(windows.into()), Lines.sentence(words));
        row.getStyleClass().add("line");
        return row;
    }

    private static Card yields(ForecastViewModel model) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        Runnable show = () -> {
            grid.getChildren().clear();
            for (BroodLines.Yield line : model.broods().yields()) {
                grid.addRow(
                        grid.getRowCount(),
                        Words.plain(line.brood()),
                        Words.strong(line.count()),
                        Words.muted(line.of()));
            }
        };
        model.broods().yields().addListener((ListChangeListener<BroodLines.Yield>) change -> show.run());
        show.run();
        VBox both = new VBox(
                grid,
                Words.caption(Texts.say("80 % interval")),
                Lines.captions(model.broods().learned()));
        both.getStyleClass().add("lines");
        return Card.titled(
                Texts.say("Yield, and what is learned"), new Scrolled(Texts.say("yield and what is learned"), both));
    }

    private static Card toDo(ForecastViewModel model) {
        VBox both = new VBox(
                Lines.sentences(model.toDo()), Lines.captions(model.broods().notes()));
        both.getStyleClass().add("lines");
        return Card.titled(
                Texts.say("To do"),
                new Scrolled(Texts.say("To do"), both),
                Words.wrapped(Words.caption(Texts.say(
                        "Slings left together eat each other: separating within a week is common practice, not a "
                                + "measured limit."))));
    }
}
