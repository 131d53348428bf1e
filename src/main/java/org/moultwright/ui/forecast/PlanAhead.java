package org.moultwright.ui.forecast;

import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.text.ChanceWords;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Words;

/** What a keeper plans with: another set-point, days away, pots to have ready. */
final class PlanAhead {
    private static final String RULE = Texts.say(
            "Hands: about a week after a tray's first slings they must be separated. Common practice, no source.");

    private PlanAhead() {}

    static Columns of(ForecastViewModel model) {
        Card whatIf = Card.titled(Texts.say("If the set-point were"), WhatIfCard.of(model));
        Columns all = Columns.even(whatIf, away(model.away()), pots(model.pots()));
        // What may happen is told in sentences, and they need the room.
        HBox.setHgrow(whatIf, Priority.NEVER);
        return all;
    }

    private static Card away(AwayViewModel away) {
        Label title = Words.cardTitle("");
        title.textProperty().bind(away.titleProperty());
        Label sentence = Words.wrapped(Words.strong(""));
        sentence.textProperty().bind(away.sentenceProperty());
        Label anything = Words.wrapped(Words.muted(""));
        anything.textProperty().bind(away.anythingProperty());
        anything.managedProperty().bind(anything.textProperty().isNotEmpty());
        Label rule = Words.wrapped(Words.caption(RULE));
        VBox words = new VBox(sentence, Lines.of(away.lines(), PlanAhead::away), anything, rule);
        words.getStyleClass().add("lines");
        return new Card(title, new Scrolled(Texts.say("days away"), words));
    }

    private static List<Node> away(AwayLine line) {
        Flow first = new Flow(grown(Lines.sentence(line.sentence())), hands(line));
        first.getStyleClass().add("away-line");
        VBox block = new VBox(first);
        line.details().forEach(detail -> block.getChildren().add(Words.wrapped(Words.caption(detail))));
        return List.of(block);
    }

    private static Label hands(AwayLine line) {
        Label hands = Words.caption(Texts.say("hands: {0}", ChanceWords.percent(line.needsHands())));
        hands.setMinWidth(Region.USE_PREF_SIZE);
        return hands;
    }

    private static Label grown(Label label) {
        HBox.setHgrow(label, Priority.ALWAYS);
        label.setMaxWidth(Double.MAX_VALUE);
        return label;
    }

    private static Card pots(PotsViewModel pots) {
        Label sentence = Words.wrapped(Words.strong(""));
        sentence.textProperty().bind(pots.sentenceProperty());
        return Card.titled(
                Texts.say("Pots to have ready"),
                SafetyChips.of(Texts.say("enough pots"), pots.safetyProperty()),
                sentence,
                new Scrolled(Texts.say("pots by day"), byDay(pots)));
    }

    private static GridPane byDay(PotsViewModel pots) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        Runnable show = () -> {
            grid.getChildren().clear();
            for (PotNeeds.Need need : pots.needs()) {
                Label more = Words.muted("+" + need.more());
                Label all = Words.strong(Integer.toString(need.pots()));
                grid.addRow(grid.getRowCount(), Words.plain(pots.by(need)), more, all);
                GridPane.setHalignment(more, HPos.RIGHT);
                GridPane.setHalignment(all, HPos.RIGHT);
                GridPane.setHgrow(more, Priority.ALWAYS);
            }
        };
        pots.needs().addListener((ListChangeListener<PotNeeds.Need>) change -> show.run());
        show.run();
        return grid;
    }
}
