package org.moultwright.ui.settings;

import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Swatch;
import org.moultwright.ui.control.Words;

/** How stages are called: one of the ways in use, and over it the keeper's own words. */
final class LabelsCard extends VBox {
    private final SettingsViewModel model;

    LabelsCard(SettingsViewModel model) {
        this.model = model;
        ChoiceRow<String> ways = new ChoiceRow<>(
                model.vocabularies().stream().map(Vocabulary::title).toList(),
                title -> Texts.say(title),
                model.vocabularyProperty().map(Vocabulary::title),
                this::choose);
        getChildren()
                .add(Card.titled(
                        Texts.say("Names of the stages"),
                        Words.wrapped(Words.muted(Texts.say(
                                "N1 means three different things in the trade. Choose a way, then change any word."))),
                        ways,
                        fields()));
    }

    private void choose(String title) {
        model.vocabularies().stream()
                .filter(vocabulary -> vocabulary.title().equals(title))
                .forEach(model::choose);
    }

    private GridPane fields() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        for (Stage stage : Stage.values()) {
            grid.addRow(grid.getRowCount(), Swatch.tall(stage), field(stage), Words.caption(seen(stage)));
        }
        return grid;
    }

    /** A name is kept when the field is left, or at Enter. */
    private TextField field(Stage stage) {
        TextField field = new TextField();
        field.setAccessibleText(Texts.say("name of the stage {0}", stage.key()));
        Runnable show = () -> field.setText(model.vocabularyProperty().get().label(stage));
        Runnable keep = () -> {
            model.label(stage, field.getText());
            show.run();
        };
        field.setOnAction(event -> keep.run());
        field.focusedProperty().addListener((observed, before, focused) -> {
            if (!focused) {
                keep.run();
            }
        });
        model.vocabularyProperty().addListener((observed, before, now) -> show.run());
        show.run();
        return field;
    }

    private static String seen(Stage stage) {
        return switch (stage) {
            case EGG -> Texts.say("pearl; before eclosion segments show");
            case POSTEMBRYO -> Texts.say("shell cast, legs folded, hardly moves");
            case INSTAR1 -> Texts.say("walks clumsily, pale");
            case DARKENED -> Texts.say("hair patch shows through the skin");
            case INSTAR2 -> Texts.say("self-feeding, leaves the sac");
        };
    }
}
