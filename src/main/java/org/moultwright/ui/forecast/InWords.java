package org.moultwright.ui.forecast;

import java.util.List;
import java.util.stream.Stream;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.Flow;
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
        BroodLines broods = model.broods();
        LineList lines = new LineList(
                Texts.say("yield and what is learned"),
                () -> Stream.of(
                                broods.yields().stream().map(InWords::ofBrood),
                                Stream.of(LineList.Line.caption(Texts.say("80 % interval"))),
                                broods.learned().stream().map(LineList.Line::caption))
                        .flatMap(part -> part),
                List.of(broods.yields(), broods.learned()));
        return Card.titled(Texts.say("Yield, and what is learned"), lines);
    }

    private static LineList.Line ofBrood(BroodLines.Yield line) {
        return new LineList.Line("%s, %s, %s".formatted(line.brood(), line.count(), line.of()), () -> {
            Label brood = Words.plain(line.brood());
            Label count = Words.strong(line.count());
            List.of(brood, count).forEach(label -> label.getStyleClass().add("yield-column"));
            Flow row = new Flow(brood, count, Words.muted(line.of()));
            row.getStyleClass().add("yield-row");
            return row;
        });
    }

    private static Card toDo(ForecastViewModel model) {
        ObservableList<String> notes = model.broods().notes();
        LineList lines = new LineList(
                Texts.say("To do"),
                () -> Stream.concat(
                        model.toDo().stream().map(LineList.Line::sentence),
                        notes.stream().map(LineList.Line::caption)),
                List.of(model.toDo(), notes));
        return Card.titled(
                Texts.say("To do"),
                lines,
                Words.wrapped(Words.caption(Texts.say(
                        "Slings left together eat each other: separating within a week is common practice, not a "
                                + "measured limit."))));
    }
}
