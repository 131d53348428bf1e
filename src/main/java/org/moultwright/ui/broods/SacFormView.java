package org.moultwright.ui.broods;

import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.PageHeader;
import org.moultwright.ui.control.Tone;

/**
 * What every form about a sac has: a head with its actions, what is wrong, and keys. Enter goes on, Ctrl and Enter
 * keeps, Escape leaves it as it is.
 */
abstract class SacFormView extends VBox {
    private final SacForm form;
    private final FormInputs inputs;

    SacFormView(SacForm form) {
        this.form = form;
        this.inputs = new FormInputs(this::keep);
        getStyleClass().addAll("page", "sac-form");
        addEventHandler(KeyEvent.KEY_PRESSED, inputs::pressed);
        // A field with a filter of its own keeps these to itself.
        addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                form.leave();
                event.consume();
            } else if (event.getCode() == KeyCode.ENTER && event.isShortcutDown()) {
                keep();
                event.consume();
            }
        });
    }

    final FormInputs inputs() {
        return inputs;
    }

    /** Puts the keeper's hands on the first field, once it is in the window. */
    final void takeFocus() {
        inputs.focusFirst();
    }

    /** The head of the page and beneath it what is wrong; what is begun can be dropped. */
    final List<Node> head(String title, String subtitle) {
        Button drop = Buttons.secondary(Texts.say("Start afresh"), form::drop);
        drop.setAccessibleText(Texts.say("drop what is written here"));
        drop.visibleProperty().bind(form.writtenProperty());
        drop.managedProperty().bind(drop.visibleProperty());
        PageHeader header = new PageHeader(title, Buttons.secondary(Texts.say("Back"), form::leave), drop);
        header.subtitleProperty().set(subtitle);
        return List.of(
                header,
                banner(form.problemProperty()),
                banner(form.notSavedProperty()),
                banner(form.notOnDiskProperty()));
    }

    final void keep() {
        form.keep();
        inputs.focusProblem();
    }

    static GridPane grid() {
        GridPane grid = new GridPane();
        grid.getStyleClass().addAll("form", "sac-grid");
        return grid;
    }

    /** A grid of words and fields as wide as their card. */
    static GridPane wide() {
        GridPane grid = grid();
        grid.getStyleClass().add("sac-wide");
        ColumnConstraints fields = new ColumnConstraints();
        fields.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().addAll(new ColumnConstraints(), fields);
        return grid;
    }

    /** A row: its word, and the field. */
    static void row(GridPane grid, int row, Node word, Node field) {
        grid.addRow(row, word, field);
        GridPane.setValignment(word, VPos.TOP);
        word.getStyleClass().add("sac-word");
    }

    private static Banner banner(ObservableValue<String> sentence) {
        Banner banner = new Banner(Tone.BAD);
        banner.sentenceProperty().bind(sentence);
        return banner;
    }
}
