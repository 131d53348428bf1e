package org.moultwright.ui.register;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.domain.Brood;
import org.moultwright.domain.PotEvent;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** The pot looked at: what it is, how its animal is, and its story, newest first. */
final class PotCard extends VBox {
    private final RegisterViewModel model;
    private final VBox facts = new VBox();
    private final VBox story = new VBox();

    PotCard(RegisterViewModel model) {
        this.model = model;
        facts.getStyleClass().add("pot-facts");
        getStyleClass().addAll("card", "pot-card");
        Scrolled scrolled = new Scrolled(Texts.say("the pot's story"), story);
        VBox.setVgrow(scrolled, Priority.ALWAYS);
        getChildren().addAll(facts, scrolled);
        model.cursorProperty().addListener((observed, before, now) -> show());
        model.vocabularyProperty().addListener((observed, before, now) -> show());
        show();
    }

    private void show() {
        facts.getChildren().clear();
        story.getChildren().clear();
        model.cursorProperty().get().ifPresentOrElse(this::show, this::showNone);
    }

    private void showNone() {
        facts.getChildren()
                .addAll(
                        Words.cardTitle(Texts.say("One pot's story")),
                        Words.wrapped(
                                Words.muted(
                                        Texts.say(
                                                "Scan a label, or choose a row: what that pot is and what became of its animal stands here."))));
    }

    private void show(PotRow row) {
        facts.getChildren()
                .addAll(
                        Words.styled(row.code(), "tray-name"),
                        state(row),
                        Words.wrapped(Words.plain(row.brood().taxon())),
                        Words.wrapped(Words.muted(RegisterWords.from(row))),
                        Words.wrapped(Words.muted(RegisterWords.age(row, model.now()))));
        story.getChildren().add(Words.cardTitle(Texts.say("Its story")));
        lines(row).forEach(line -> story.getChildren().add(line));
    }

    private HBox state(PotRow row) {
        Flow state = new Flow(
                switch (row.state()) {
                    case ALIVE -> Swatch.dot(Tone.OK);
                    case DEAD -> Swatch.dead();
                    case HANDED_OVER -> Swatch.dot(Tone.MUTED);
                },
                Words.strong(row.state().word() + ", "
                        + RegisterWords.stage(row, model.vocabularyProperty().get())));
        state.getStyleClass().add("line");
        return state;
    }

    private List<HBox> lines(PotRow row) {
        List<HBox> lines = new ArrayList<>();
        Brood brood = row.brood();
        DayWords days = model.days();
        brood.laid()
                .ifPresent(laid ->
                        lines.add(line(days.shortDay(laid.last()), Texts.say("Sac of {0} laid", brood.code()))));
        brood.pulled()
                .ifPresent(pulled -> lines.add(line(days.shortDay(pulled), Texts.say("Sac pulled from the mother"))));
        lines.add(line(
                days.shortDay(row.potted()),
                row.size().isEmpty()
                        ? Texts.say("Potted from {0}", row.life().pot().tray())
                        : Texts.say("Potted from {0}, {1}", row.life().pot().tray(), row.size())));
        for (PotEvent event : row.life().events()) {
            lines.add(line(days.shortDay(event.at()), RegisterWords.event(event)));
        }
        Collections.reverse(lines);
        return lines;
    }

    private static HBox line(String day, String words) {
        Label said = Words.wrapped(Words.plain(words));
        HBox.setHgrow(said, Priority.ALWAYS);
        Flow line = new Flow(Words.styled(day, "muted", "story-day"), said);
        line.getStyleClass().add("story-row");
        return line;
    }
}
