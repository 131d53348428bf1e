package org.moultwright.ui.register;

import javafx.beans.InvalidationListener;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.domain.PotEvent.What;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.DayPicker;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.Words;

/** What can be written down of the pots concerned, which those are, and for which day. */
final class ActionBar extends VBox {
    private final RegisterViewModel model;
    private final Label concerns = Words.strong("");
    private final Flow actions = new Flow();

    ActionBar(RegisterViewModel model, Runnable openSlip, Runnable openLabels) {
        this.model = model;
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        DayPicker day = new DayPicker(Texts.say("written down for"), model.dayProperty());
        day.input().setPromptText(Texts.say("today"));
        Flow whom = new Flow(concerns, gap, Words.whole(Words.muted(Texts.say("written down for"))), day);
        whom.getStyleClass().add("line");
        actions.getChildren()
                .addAll(
                        button(Texts.say("Fed"), Texts.say("Ctrl + F"), What.FED),
                        button(Texts.say("Moulted"), Texts.say("Ctrl + M"), What.MOULTED),
                        button(Texts.say("Dead"), Texts.say("Ctrl + D"), What.DIED),
                        button(Texts.say("Handed over"), Texts.say("Ctrl + H"), What.HANDED_OVER),
                        page(Texts.say("Slip"), Texts.say("hand-over slip"), openSlip),
                        page(Texts.say("Labels"), Texts.say("labels again"), openLabels));
        actions.getStyleClass().add("pot-actions");
        getStyleClass().add("pot-bar");
        getChildren().addAll(whom, actions);
        InvalidationListener tell = changed -> tell();
        model.marks().revisionProperty().addListener(tell);
        model.cursorProperty().addListener(tell);
        model.shown().addListener(tell);
        tell();
    }

    private Button button(String word, String keys, What what) {
        Button button = Buttons.secondary(word, () -> model.tend(what));
        button.setGraphic(new KeyCap(keys));
        button.setContentDisplay(ContentDisplay.RIGHT);
        button.setAccessibleText(word);
        button.getStyleClass().add("pot-action");
        return button;
    }

    private static Button page(String word, String name, Runnable open) {
        Button button = Buttons.secondary(word, open);
        button.setAccessibleText(name);
        button.getStyleClass().add("pot-action");
        return button;
    }

    private void tell() {
        concerns.setText(RegisterWords.concerns(
                model.marks().count(),
                model.shown().size(),
                model.cursorProperty().get().isPresent()));
        boolean none = model.concerned().isEmpty();
        actions.setDisable(none);
    }
}
