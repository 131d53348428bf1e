package org.moultwright.ui.alarm;

import java.time.Duration;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.kordamp.ikonli.javafx.FontIcon;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.control.Words;

/**
 * An alarm over the whole width, to be read across the room. It takes no room while there is none, and has no parts
 * before the first.
 */
public final class AlarmBanner extends VBox {
    private static final int ICON_SIZE = 44;

    private final Label headline = Words.wrapped(Words.styled("", "alarm-headline"));
    private final Label figure = Words.styled("", "alarm-figure");
    private final Label detail = Words.wrapped(Words.plain(""));
    private final Label others = Words.wrapped(Words.plain(""));
    private final Label problem = Words.wrapped(Words.strong(""));
    private final AlarmViewModel model;
    private final Node answers;

    public AlarmBanner(AlarmViewModel model) {
        this.model = model;
        this.answers = answers(model);
        getStyleClass().add("alarm-banner");
        setAccessibleRole(AccessibleRole.TEXT);
        managedProperty().bind(visibleProperty());
        model.noticeProperty().addListener((observed, before, now) -> show(now));
        show(model.noticeProperty().get());
    }

    private void lay() {
        VBox words = new VBox(headline, detail, others, problem);
        words.getStyleClass().add("alarm-words");
        HBox.setHgrow(words, Priority.ALWAYS);
        figure.setMinWidth(USE_PREF_SIZE);
        Flow row = new Flow(FontIcon.of(Sign.ALARM, ICON_SIZE), words, figure);
        row.getStyleClass().add("alarm-row");
        getChildren().addAll(row, answers);
        problem.textProperty().bind(model.problemProperty());
        hideWhileEmpty(others);
        hideWhileEmpty(problem);
        answers.managedProperty().bind(answers.visibleProperty());
    }

    private void show(AlarmNotice notice) {
        if (getChildren().isEmpty() && !notice.headline().isEmpty()) {
            lay();
        }
        headline.setText(notice.headline());
        figure.setText(notice.figure());
        detail.setText(notice.detail());
        others.setText(notice.others());
        answers.setVisible(notice.canBeSeen());
        setVisible(!notice.headline().isEmpty());
        setAccessibleText(Texts.say(
                        "Alarm: {0} {1}. {2} {3}", notice.headline(), notice.figure(), notice.detail(), notice.others())
                .strip());
    }

    private static Node answers(AlarmViewModel model) {
        Flow row = new Flow(
                answer(Texts.say("I have seen it"), AlarmKeys.SEEN, model::acknowledge),
                quiet(model, AlarmKeys.SHORT_QUIET, AlarmKeys.SHORT),
                quiet(model, AlarmKeys.LONG_QUIET, AlarmKeys.LONG));
        row.getStyleClass().add("alarm-answers");
        return row;
    }

    private static Button quiet(AlarmViewModel model, Duration length, String key) {
        return answer(Texts.say("Quiet for {0} min", length.toMinutes()), key, () -> model.snooze(length));
    }

    private static Button answer(String word, String key, Runnable deed) {
        Button button = Buttons.secondary(word + "  ·  " + key, deed);
        button.setAccessibleText(word);
        return button;
    }

    private static void hideWhileEmpty(Label label) {
        label.managedProperty().bind(label.textProperty().isNotEmpty());
        label.visibleProperty().bind(label.managedProperty());
    }
}
