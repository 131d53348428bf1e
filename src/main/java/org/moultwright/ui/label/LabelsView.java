package org.moultwright.ui.label;

import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Columns;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.control.Words;

/** Lays out labels on their sheet: the sheet's form at the left, how it will look at the right. */
public final class LabelsView extends VBox {
    private final SheetFields fields;

    /**
     * @param title what they are
     * @param subtitle for what
     */
    public LabelsView(LabelsViewModel model, String title, String subtitle, Runnable close) {
        PageHeader header = new PageHeader(title, Buttons.secondary(Texts.say("Back"), close));
        header.subtitleProperty().set(subtitle);
        this.fields = new SheetFields(model.form(), model.preview(), model::saveCalibration, model::printCalibration);
        Label codes = Words.wrapped(Words.plain(""));
        codes.textProperty()
                .bind(model.preview()
                        .jobProperty()
                        .map(job -> job.map(made -> LabelWords.count(made) + ": " + LabelWords.codes(made))
                                .orElse(Texts.say("No labels until the sheet is sound."))));
        Button save = Buttons.primary(Texts.say("Save labels as PDF"), model::save);
        Button print = Buttons.taking(Texts.say("Print"), model::print);
        List.of(save, print)
                .forEach(button -> button.disableProperty()
                        .bind(model.preview().jobProperty().map(job -> job.isEmpty())));
        Flow actions = new Flow(save, print);
        actions.getStyleClass().add("pot-actions");
        Card card = Card.titled(Texts.say("Where they go"), codes, fields, actions);
        card.getStyleClass().add("label-form");
        SheetCard sheet = new SheetCard(model.form(), model.preview());
        HBox.setHgrow(card, Priority.ALWAYS);
        HBox.setHgrow(sheet, Priority.ALWAYS);
        Columns columns = new Columns(card, sheet);
        columns.getStyleClass().add("bench-columns");
        setVgrow(columns, Priority.ALWAYS);
        getStyleClass().addAll("page", "register");
        getChildren()
                .addAll(
                        header,
                        banner(Tone.OK, model.news().doneProperty()),
                        banner(Tone.BAD, model.news().problemProperty()),
                        columns);
    }

    /** Puts the keeper's hands on the first field. */
    public void takeFocus() {
        fields.takeFocus();
    }

    private static Banner banner(Tone tone, ObservableValue<String> sentence) {
        Banner banner = new Banner(tone);
        banner.sentenceProperty().bind(sentence);
        return banner;
    }
}
