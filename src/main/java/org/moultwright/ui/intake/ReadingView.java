package org.moultwright.ui.intake;

import javafx.scene.Parent;
import javafx.scene.control.CheckBox;
import javafx.scene.control.TextField;
import org.moultwright.ui.control.DayPicker;
import org.moultwright.ui.control.Words;

/** Lays out the form for a reading typed. */
final class ReadingView {
    private final EntryForm form;
    private final TextField celsius;

    ReadingView(ReadingViewModel model, Runnable close) {
        celsius = EntryForm.field("temperature in °C", "26.4", model.celsiusProperty());
        CheckBox doubtful = new CheckBox("something speaks against it: keep it, but count it for nothing");
        doubtful.selectedProperty().bindBidirectional(model.doubtfulProperty());
        form = new EntryForm(
                        "Write in a reading",
                        "as you read it off any thermometer",
                        model.entry(),
                        () -> {
                            model.keep();
                            celsius.requestFocus();
                        },
                        close)
                .add("Temperature", celsius, Words.muted("°C"))
                .add(
                        "Humidity",
                        EntryForm.field("humidity in %", "72", model.humidityProperty()),
                        Words.muted("%, or leave it empty"))
                .add(
                        "Read at",
                        EntryForm.field("time of day", "now", model.timeProperty()),
                        new DayPicker("day it was read", model.dayProperty()))
                .add("Doubtful", doubtful)
                .note("Between readings more than three hours apart the time counts as not measured. It is filled from"
                        + " the set-point and the readings of the days around it. A lowest and highest for each day"
                        + " say more.");
    }

    Parent node() {
        return form;
    }

    void takeFocus() {
        celsius.requestFocus();
    }
}
