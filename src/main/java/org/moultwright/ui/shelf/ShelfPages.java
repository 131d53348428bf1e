package org.moultwright.ui.shelf;

import java.util.List;
import javafx.scene.Parent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import org.moultwright.language.Texts;
import org.moultwright.task.Once;
import org.moultwright.ui.label.LabelsView;
import org.moultwright.ui.label.LabelsViewModel;
import org.moultwright.workflow.PotLabel;

/** The shelf, and the page of labels that opens over it. */
final class ShelfPages extends StackPane {
    private static final KeyCombination SAVE = new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN);
    private static final KeyCombination PRINT = new KeyCodeCombination(KeyCode.P, KeyCombination.SHORTCUT_DOWN);

    private final ShelfView shelf;
    private final LabelsViewModel labelsModel;
    private final Once<LabelsView> labels;

    ShelfPages(ShelfDesk desk) {
        ShelfViewModel model = new ShelfViewModel(desk);
        this.shelf = new ShelfView(model);
        this.labelsModel = new LabelsViewModel(desk.labels(), desk.clock());
        this.labels = new Once<>(() -> new LabelsView(
                labelsModel,
                Texts.say("Container labels"),
                Texts.say("for the container chosen and all that stands in it"),
                this::close));
        model.whenLabels(this::openLabels);
        getChildren().setAll(shelf);
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    }

    /** A page half filled in waits for its keeper. */
    void takeFocus() {
        if (showsLabels()) {
            labels.get().takeFocus();
        } else {
            shelf.takeFocus();
        }
    }

    private void openLabels(List<PotLabel> wanted) {
        labelsModel.begin(wanted);
        show(labels.get());
    }

    private void close() {
        show(shelf);
    }

    private void show(Parent page) {
        getChildren().setAll(page);
        takeFocus();
    }

    private boolean showsLabels() {
        return labels.made().filter(getChildren()::contains).isPresent();
    }

    private void pressed(KeyEvent event) {
        if (!showsLabels()) {
            return;
        }
        if (SAVE.match(event)) {
            labelsModel.save();
        } else if (PRINT.match(event)) {
            labelsModel.print();
        } else if (event.getCode() == KeyCode.ESCAPE) {
            close();
        } else {
            return;
        }
        event.consume();
    }
}
