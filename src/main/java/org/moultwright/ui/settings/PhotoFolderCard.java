package org.moultwright.ui.settings;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.DirectoryChooser;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.Words;

/** The folder that new pictures come to. */
final class PhotoFolderCard extends VBox {
    private final SettingsViewModel model;
    private final TextField folder = new TextField();
    private final Label problem = Words.wrapped(Words.styled("", "settings-problem"));

    PhotoFolderCard(SettingsViewModel model) {
        this.model = model;
        folder.setText(model.settingsProperty().get().desk().photoFolder());
        folder.setAccessibleText(Texts.say("folder that new pictures come to"));
        folder.setOnAction(event -> keep());
        folder.focusedProperty().addListener((observed, before, focused) -> {
            if (!focused) {
                keep();
            }
        });
        problem.managedProperty().bind(problem.textProperty().isNotEmpty());
        HBox.setHgrow(folder, Priority.ALWAYS);
        Flow row = new Flow(folder, Buttons.secondary(Texts.say("Choose"), this::choose));
        row.getStyleClass().add("page-actions");
        getChildren()
                .add(Card.titled(
                        Texts.say("Photos"),
                        Words.wrapped(Words.muted(Texts.say(
                                "The folder your camera or telephone leaves pictures in. Those of the last day are "
                                        + "offered for the tray under your hand. Empty for none."))),
                        row,
                        problem));
    }

    private void choose() {
        DirectoryChooser dialog = new DirectoryChooser();
        dialog.setTitle(Texts.say("The folder pictures come to"));
        Optional.ofNullable(dialog.showDialog(getScene().getWindow()))
                .map(File::toString)
                .ifPresent(chosen -> {
                    folder.setText(chosen);
                    keep();
                });
    }

    private void keep() {
        String typed = folder.getText().strip();
        problem.setText(
                typed.isEmpty() || isFolder(typed)
                        ? ""
                        : Texts.say("There is no folder '{0}' now. It is watched once it is there.", typed));
        model.choose(model.settingsProperty().get().desk().withPhotoFolder(typed));
    }

    private static boolean isFolder(String typed) {
        try {
            return Files.isDirectory(Path.of(typed));
        } catch (InvalidPathException noPath) {
            return false;
        }
    }
}
