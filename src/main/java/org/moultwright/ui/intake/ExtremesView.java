package org.moultwright.ui.intake;

import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.Parent;
import javafx.scene.control.CheckBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.DayPicker;
import org.moultwright.ui.control.Words;

/** Lays out the form for a day's lowest and highest. */
final class ExtremesView {
    private final EntryForm form;
    private final TextField lowest;

    ExtremesView(ExtremesViewModel model, Runnable close) {
        CheckBox sinceLast = new CheckBox();
        sinceLast.selectedProperty().bindBidirectional(model.sinceLastProperty());
        sinceLast
                .visibleProperty()
                .bind(Bindings.createBooleanBinding(
                        () -> model.lastProperty().get().isPresent(), model.lastProperty()));
        sinceLast
                .textProperty()
                .bind(Bindings.createStringBinding(
                        () -> Texts.say("since it was reset, {0}", model.lastWords()), model.lastProperty()));
        DayPicker day = new DayPicker(Texts.say("the day"), model.dayProperty());
        day.disableProperty().bind(model.sinceLastProperty());
        lowest = EntryForm.field(
                Texts.say("lowest temperature in {0}", Degrees.symbol()),
                Degrees.number(24.5, 1),
                model.lowestProperty());
        form = new EntryForm(
                        Texts.say("Write in a day's lowest and highest"),
                        Texts.say("from a thermometer that remembers both"),
                        model.entry(),
                        () -> {
                            model.keep();
                            lowest.requestFocus();
                        },
                        close)
                .add(Texts.say("Day"), day, sinceLast)
                .add(
                        Texts.say("Temperature"),
                        lowest,
                        Words.muted(Texts.say("to")),
                        EntryForm.field(
                                Texts.say("highest temperature in {0}", Degrees.symbol()),
                                Degrees.number(27, 1),
                                model.highestProperty()),
                        Words.muted(Degrees.symbol()))
                .add(
                        Texts.say("Humidity"),
                        EntryForm.field(Texts.say("lowest humidity in %"), "65", model.driestProperty()),
                        Words.muted(Texts.say("to")),
                        EntryForm.field(Texts.say("highest humidity in %"), "80", model.dampestProperty()),
                        Words.muted(Texts.say("%, or leave both empty")))
                .note(Texts.say(
                        "A day runs from midnight to midnight; today runs until now. If you reset the thermometer "
                                + "whenever you read it, count since then. The time counts as a swing between the two. "
                                + "Where a probe in the same place measured, the probe counts."));
        form.getChildren().add(lately(model.lately()));
    }

    private static Card lately(ObservableList<String> written) {
        VBox lines = new VBox();
        lines.getStyleClass().add("lines");
        Runnable show = () ->
                lines.getChildren().setAll(written.stream().map(Words::plain).toList());
        written.addListener((ListChangeListener<String>) change -> show.run());
        show.run();
        Card card = Card.titled(Texts.say("Written lately"), lines);
        card.visibleProperty().bind(Bindings.isNotEmpty(written));
        card.managedProperty().bind(card.visibleProperty());
        return card;
    }

    Parent node() {
        return form;
    }

    void takeFocus() {
        lowest.requestFocus();
    }
}
