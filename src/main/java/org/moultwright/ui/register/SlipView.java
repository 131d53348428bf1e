package org.moultwright.ui.register;

import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.domain.label.Paper;
import org.moultwright.language.Texts;
import org.moultwright.text.SlipWords;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.ChoiceGroup;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.DayPicker;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.FormFields;
import org.moultwright.ui.control.NoteArea;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** Lays out the form of a hand-over slip: who, to whom and when at the left, what is on it at the right. */
final class SlipView extends VBox {
    private final SlipViewModel model;
    private final NoteArea from =
            area(Texts.say("handed over by"), Texts.say("name and address as they are to stand on the slip"));
    private final NoteArea to = area(Texts.say("taken over by"), Texts.say("empty: lines to fill in by hand"));

    SlipView(SlipViewModel model, Runnable close) {
        this.model = model;
        PageHeader header = new PageHeader(Texts.say("Hand-over slip"), Buttons.secondary(Texts.say("Back"), close));
        header.subtitleProperty().set(Texts.say("one PDF for whoever takes the animals"));
        Columns columns = new Columns(form(), contents());
        columns.getStyleClass().add("bench-columns");
        setVgrow(columns, Priority.ALWAYS);
        getStyleClass().addAll("page", "register");
        getChildren()
                .addAll(
                        header,
                        banner(Tone.OK, model.doneProperty()),
                        banner(Tone.BAD, model.problemProperty()),
                        columns);
    }

    /** Puts the keeper's hands on the first field that is still empty. */
    void takeFocus() {
        (model.fromProperty().get().isEmpty() ? from : to).requestFocus();
    }

    private Node form() {
        bind(from, model.fromProperty());
        bind(to, model.toProperty());
        DayPicker day = new DayPicker(Texts.say("day of the hand-over"), model.dayProperty());
        day.input().setPromptText(Texts.say("today"));
        Flow papers = new Flow();
        papers.getStyleClass().add("span-chips");
        ChoiceGroup<Paper> group = new ChoiceGroup<>(model.paperProperty(), model.paperProperty()::set);
        for (Paper paper : Paper.values()) {
            ToggleChip chip = new ToggleChip(paper.title());
            group.add(chip, paper);
            papers.getChildren().add(chip);
        }
        ToggleChip also = new ToggleChip(Texts.say("Write them down as handed over"));
        also.selectedProperty().bindBidirectional(model.alsoHandsOverProperty());
        Button save = Buttons.primary(Texts.say("Save the slip as PDF"), model::save);
        save.disableProperty().bind(model.contentsProperty().isEmpty());
        Card card = Card.titled(
                Texts.say("Who and when"),
                FormFields.field(Texts.say("from"), from),
                FormFields.field(Texts.say("to"), to),
                FormFields.row(FormFields.field(Texts.say("day"), day), FormFields.field(Texts.say("paper"), papers)),
                FormFields.field(Texts.say("once it is saved"), also),
                save);
        card.getStyleClass().add("slip-form");
        HBox.setHgrow(card, Priority.ALWAYS);
        return card;
    }

    private Node contents() {
        Label pots = Words.wrapped(Words.plain(""));
        pots.textProperty().bind(model.contentsProperty());
        VBox words = new VBox(pots);
        SlipWords.CAUTIONS.forEach(caution -> words.getChildren().add(Words.wrapped(Words.caption(caution))));
        words.getStyleClass().add("pot-bar");
        Card card = Card.titled(Texts.say("What is on it"), new Scrolled(Texts.say("what is on the slip"), words));
        card.getStyleClass().add("slip-contents");
        HBox.setHgrow(card, Priority.ALWAYS);
        return card;
    }

    private static void bind(NoteArea area, StringProperty text) {
        area.textProperty().bindBidirectional(text);
    }

    private static NoteArea area(String name, String prompt) {
        NoteArea area = new NoteArea(name, prompt);
        area.setPrefRowCount(4);
        return area;
    }

    private static Banner banner(Tone tone, ObservableValue<String> sentence) {
        Banner banner = new Banner(tone);
        banner.sentenceProperty().bind(sentence);
        return banner;
    }
}
