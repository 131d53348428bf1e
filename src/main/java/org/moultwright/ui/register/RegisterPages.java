package org.moultwright.ui.register;

import javafx.scene.Parent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import org.moultwright.language.Texts;
import org.moultwright.task.Once;
import org.moultwright.text.DayWords;
import org.moultwright.ui.label.DesignChoice;
import org.moultwright.ui.label.LabelsView;
import org.moultwright.ui.label.LabelsViewModel;

/** The register and the pages that open over it for the pots concerned: a hand-over slip, their labels again. */
final class RegisterPages extends StackPane {
    private static final KeyCombination SAVE = new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN);
    private static final KeyCombination PRINT = new KeyCodeCombination(KeyCode.P, KeyCombination.SHORTCUT_DOWN);

    private final DayWords days;
    private final DesignChoice design;
    private final RegisterViewModel model;
    private final RegisterView register;
    private final SlipViewModel slipModel;
    private final Once<SlipView> slip;
    private final LabelsViewModel labelsModel;
    private final Once<LabelsView> labels;

    RegisterPages(RegisterDesk desk) {
        this.days = desk.days();
        this.design = desk.design();
        this.model = new RegisterViewModel(desk);
        this.slipModel = new SlipViewModel(desk, model);
        this.slip = new Once<>(() -> new SlipView(slipModel, this::close));
        this.labelsModel = new LabelsViewModel(desk.labels(), desk.clock());
        this.labels = new Once<>(() -> again(labelsModel, this::close));
        this.register = new RegisterView(model, this::openSlip, this::openLabels);
        getChildren().setAll(register);
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    }

    /** The page for labels of pots that had theirs before. */
    static LabelsView again(LabelsViewModel labels, Runnable close) {
        return new LabelsView(
                labels,
                Texts.say("Labels again"),
                Texts.say("for the pots selected, with the words that stood on them the first time; "
                        + "code square and name as chosen on the bench now"),
                close);
    }

    /** A page half filled in waits for its keeper. */
    void takeFocus() {
        if (shows(slip)) {
            slip.get().takeFocus();
        } else if (shows(labels)) {
            labels.get().takeFocus();
        } else {
            register.takeFocus();
        }
    }

    private void openSlip() {
        if (!model.concerned().isEmpty()) {
            slipModel.begin(model.concerned());
            show(slip.get());
        }
    }

    private void openLabels() {
        if (!model.concerned().isEmpty()) {
            labelsModel.begin(model.concerned().stream()
                    .map(row -> row.label(design.chosen().get(), days))
                    .toList());
            show(labels.get());
        }
    }

    private void close() {
        show(register);
    }

    private void show(Parent page) {
        getChildren().setAll(page);
        takeFocus();
    }

    private boolean shows(Once<? extends Parent> page) {
        return page.made().filter(getChildren()::contains).isPresent();
    }

    private void pressed(KeyEvent event) {
        if (SAVE.match(event)) {
            save();
        } else if (PRINT.match(event)) {
            print();
        } else if (event.getCode() == KeyCode.ESCAPE && !getChildren().contains(register)) {
            close();
        } else {
            return;
        }
        event.consume();
    }

    private void save() {
        if (shows(slip)) {
            slipModel.save();
        } else if (shows(labels)) {
            labelsModel.save();
        } else {
            openSlip();
        }
    }

    private void print() {
        if (shows(labels)) {
            labelsModel.print();
        } else if (getChildren().contains(register)) {
            openLabels();
        }
    }
}
