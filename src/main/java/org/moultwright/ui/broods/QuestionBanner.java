package org.moultwright.ui.broods;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.Tone;

/** Asks what does not add up; each answer is a button and a key. It takes no room while nothing is asked. */
final class QuestionBanner extends StackPane {
    private final ObservableValue<Optional<OpeningQuestion>> question;

    QuestionBanner(ObservableValue<Optional<OpeningQuestion>> question) {
        this.question = question;
        managedProperty().bind(visibleProperty());
        question.addListener((observed, before, now) -> show(now));
        show(question.getValue());
    }

    /** Gives the answer a key stands for, unless the key is being written somewhere; whether it did. */
    boolean pressed(KeyEvent event) {
        Optional<OpeningQuestion.Answer> answer = question.getValue().stream()
                .flatMap(asked -> asked.answers().stream())
                .filter(one -> one.key().equals(event.getCode().getName()))
                .findFirst()
                .filter(one -> !(event.getTarget() instanceof TextField) && !event.isShortcutDown());
        answer.ifPresent(one -> one.give().run());
        return answer.isPresent();
    }

    private void show(Optional<OpeningQuestion> asked) {
        setVisible(asked.isPresent());
        getChildren().clear();
        asked.ifPresent(one -> {
            Banner banner = new Banner(Tone.WARN);
            List<Button> buttons = new ArrayList<>();
            one.answers().forEach(answer -> {
                Button button = Buttons.secondary(answer.words(), answer.give());
                button.setGraphic(new KeyCap(answer.key()));
                buttons.add(button);
            });
            banner.sentenceProperty().set(one.sentence());
            banner.detailProperty().set(Texts.say("To count again, go back to the fields; nothing is saved yet."));
            banner.setActions(buttons.toArray(Button[]::new));
            getChildren().add(banner);
            // Only then is the button in the window.
            Platform.runLater(() -> buttons.get(0).requestFocus());
        });
    }
}
