package org.moultwright.ui.settings;

import java.util.function.UnaryOperator;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Words;

/** The keeper's own command for alarms, to be tried before it is needed. */
final class AlarmCommandCard extends VBox {
    private final SettingsViewModel model;
    private final TextField command = new TextField();

    AlarmCommandCard(SettingsViewModel model, UnaryOperator<String> tryCommand) {
        this.model = model;
        Label told = Words.wrapped(Words.caption(""));
        told.managedProperty().bind(told.textProperty().isNotEmpty());
        Button test = Buttons.secondary(Texts.say("Try it"), () -> {
            String words = command.getText().strip();
            model.tryOut(() -> tryCommand.apply(words), told::setText);
        });
        test.disableProperty()
                .bind(Bindings.createBooleanBinding(() -> command.getText().isBlank(), command.textProperty()));
        command.setText(model.settingsProperty().get().alarms().command());
        command.setAccessibleText(Texts.say("command to run at an alarm"));
        command.setOnAction(event -> keep());
        command.focusedProperty().addListener((observed, before, focused) -> {
            if (!focused) {
                keep();
            }
        });
        HBox.setHgrow(command, Priority.ALWAYS);
        Flow row = new Flow(command, test);
        row.getStyleClass().add("page-actions");
        getChildren()
                .add(Card.titled(
                        Texts.say("At an alarm, also run"),
                        Words.wrapped(Words.muted(Texts.say(
                                "A command of this machine, such as one that sends a message. It finds what happened in "
                                        + "MOULTWRIGHT_WORDS. Empty for none."))),
                        row,
                        told));
    }

    private void keep() {
        model.choose(model.settingsProperty()
                .get()
                .alarms()
                .withCommand(command.getText().strip()));
    }
}
