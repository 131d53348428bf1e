package org.moultwright.ui.settings;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.settings.AlarmSettings;
import org.moultwright.ui.alarm.AlarmReach;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Words;

/** How an alarm reaches a keeper who does not look at the desk; each way can be tried before it is needed. */
final class AlarmReachCard extends VBox {
    private final SettingsViewModel model;
    private final GridPane grid = new GridPane();

    AlarmReachCard(SettingsViewModel model, AlarmReach reach) {
        this.model = model;
        grid.getStyleClass().add("form");
        row(
                Texts.say("Tone"),
                Texts.say("Heard"),
                Texts.say("Muted"),
                AlarmSettings::isHeard,
                AlarmSettings::heard,
                Texts.say("Hear it"),
                reach::tryTone);
        row(
                Texts.say("Desktop notice"),
                Texts.say("Shown"),
                Texts.say("Not shown"),
                AlarmSettings::isNoticed,
                AlarmSettings::noticed,
                Texts.say("Show one"),
                reach::tryNotice);
        getChildren().add(Card.titled(Texts.say("How an alarm reaches you"), grid));
    }

    private void row(
            String word,
            String on,
            String off,
            Predicate<AlarmSettings> isOn,
            BiFunction<AlarmSettings, Boolean, AlarmSettings> turn,
            String tryWord,
            Supplier<String> attempt) {
        ChoiceRow<Boolean> choice = new ChoiceRow<>(
                List.of(true, false),
                chosen -> chosen ? on : off,
                model.settingsProperty().map(settings -> isOn.test(settings.alarms())),
                chosen -> model.choose(turn.apply(model.settingsProperty().get().alarms(), chosen)));
        Label told = Words.wrapped(Words.caption(""));
        told.managedProperty().bind(told.textProperty().isNotEmpty());
        Button button = Buttons.secondary(tryWord, () -> model.tryOut(attempt, told::setText));
        int next = grid.getRowCount();
        grid.addRow(next, Words.plain(word), choice, button);
        grid.add(told, 1, next + 1, 2, 1);
    }
}
