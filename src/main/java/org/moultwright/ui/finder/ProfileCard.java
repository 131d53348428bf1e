package org.moultwright.ui.finder;

import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.NoteArea;
import org.moultwright.ui.control.Scrolled;
import org.moultwright.ui.control.Words;

/** The keeper's own profile: its text, and what is wrong with it as it is written. */
final class ProfileCard extends VBox {
    ProfileCard(ProfileViewModel model) {
        ChoiceBox<String> from = new ChoiceBox<>();
        from.setMinWidth(Region.USE_PREF_SIZE);
        from.getItems().setAll(model.codes());
        from.setAccessibleText(Texts.say("form to start from"));
        from.getSelectionModel().selectFirst();
        Button start = Buttons.secondary(
                Texts.say("Start from it"),
                () -> Optional.ofNullable(from.getValue()).ifPresent(model::startFrom));
        Flow starting = new Flow(from, start);
        starting.getStyleClass().add("line");
        NoteArea text = new NoteArea(
                Texts.say("profile"), Texts.say("Start from a form there is, or write its first line: code: my-probe"));
        text.setWrapText(false);
        text.getStyleClass().add("profile-text");
        text.textProperty().bindBidirectional(model.textProperty());
        VBox.setVgrow(text, Priority.ALWAYS);
        Label told = Words.wrapped(Words.strong(""));
        told.textProperty().bind(model.toldProperty());
        told.managedProperty().bind(told.textProperty().isNotEmpty());
        VBox lines = new VBox();
        lines.getStyleClass().add("problem-lines");
        model.problems().addListener((ListChangeListener<String>) change -> lines.getChildren()
                .setAll(model.problems().stream()
                        .map(problem -> Words.wrapped(Words.styled(problem, "bad", "small")))
                        .toList()));
        Scrolled problems = new Scrolled(Texts.say("what is wrong with the profile"), lines);
        problems.setMinHeight(80);
        problems.setPrefHeight(130);
        VBox.setVgrow(problems, Priority.NEVER);
        Button save = Buttons.primary(Texts.say("Keep this profile"), model::save);
        save.disableProperty().bind(model.usableProperty().not());
        getStyleClass().addAll("card", "profile-card");
        getChildren()
                .addAll(
                        Words.cardTitle(Texts.say("Your own form")),
                        Words.wrapped(
                                Words.caption(
                                        Texts.say(
                                                "A text of key: value lines with test lines of the instrument; every change is tried on "
                                                        + "them at once. The keys are in docs/profiles.md. Change the code of one you start from."))),
                        starting,
                        text,
                        told,
                        problems,
                        save);
    }
}
