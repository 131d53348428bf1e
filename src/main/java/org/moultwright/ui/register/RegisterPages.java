package org.moultwright.ui.register;

import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;

/** The register and the pages that open over it for the pots concerned. */
final class RegisterPages extends StackPane {
    private static final KeyCombination SLIP = new KeyCodeCombination(KeyCode.S, KeyCombination.SHORTCUT_DOWN);

    private final RegisterViewModel model;
    private final RegisterView register;
    private final SlipViewModel slipModel;
    private final SlipView slip;

    RegisterPages(RegisterDesk desk) {
        this.model = new RegisterViewModel(desk);
        this.slipModel = new SlipViewModel(desk, model);
        this.slip = new SlipView(slipModel, this::close);
        this.register = new RegisterView(model, this::openSlip);
        getChildren().setAll(register);
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    }

    /** A page half filled in waits for its keeper. */
    void takeFocus() {
        if (getChildren().contains(register)) {
            register.takeFocus();
        } else {
            slip.takeFocus();
        }
    }

    private void openSlip() {
        if (!model.concerned().isEmpty()) {
            slipModel.begin(model.concerned());
            getChildren().setAll(slip);
            slip.takeFocus();
        }
    }

    private void close() {
        getChildren().setAll(register);
        register.takeFocus();
    }

    private void pressed(KeyEvent event) {
        boolean isRegister = getChildren().contains(register);
        if (SLIP.match(event) && isRegister) {
            openSlip();
        } else if (SLIP.match(event)) {
            slipModel.save();
        } else if (event.getCode() == KeyCode.ESCAPE && !isRegister) {
            close();
        } else {
            return;
        }
        event.consume();
    }
}
