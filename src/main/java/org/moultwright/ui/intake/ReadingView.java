package org.moultwright.ui.intake;

import javafx.scene.Parent;
import javafx.scene.control.CheckBox;
import javafx.scene.control.TextField;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.DayPicker;
import org.moultwright.ui.control.Words;

/** Lays out the form for a reading typed. */
final class ReadingView {
    private final EntryForm form;
    private final TextField celsius;

    ReadingView(ReadingViewModel model, Runnable close) {
        celsius = EntryForm.field(
                Texts.say("temperature in {0}", Degrees.symbol()), Degrees.number(26.4, 1), model.celsiusProperty());
        CheckBox doubtful = new CheckBox(Texts.say("something speaks against it: keep it, but count it for nothing"));
        doubtful.selectedProperty().bindBidirectional(model.doubtfulProperty());
        form = new EntryForm(
                        Texts.say("Write in a reading"),
                        Texts.say("as you read it off any thermometer"),
                        model.entry(),
                        () -> {
                            model.keep();
                            celsius.requestFocus();
                        },
                        close)
                .add(Texts.say("Temperature"), celsius, Words.muted(Degrees.symbol()))
                .add(
                        Texts.say("Humidity"),
                        EntryForm.field(Texts.say("humidity in %"), "72", model.humidityProperty()),
                        Words.muted(Texts.say("%, or leave it empty")))
                .add(
                        Texts.say("Read at"),
                        EntryForm.field(Texts.say("time of day"), Texts.say("now"), model.timeProperty()),
                        new DayPicker(Texts.say("day it was read"), model.dayProperty()))
                .add(Texts.say("Doubtful"), doubtful)
                .note(Texts.say("Between readings more than three hours apart the time counts as not measured. It is "
                        + "filled from the set-point and the readings of the days around it. A lowest and highest "
                        + "for each day say more."));
    }

    Parent node() {
        return form;
    }

    void takeFocus() {
        celsius.requestFocus();
    }
}
