package org.moultwright.ui.register;

import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.FormFields;
import org.moultwright.ui.control.Typable;
import org.moultwright.ui.control.Words;

/**
 * Where a code is scanned or typed, and what it led to. A scanner that stands in for a keyboard types the code and
 * Enter; a code that is on no pot stays there, selected, so that the next scan writes over it.
 */
final class ScanBar extends Flow {
    private static final Typable CODE = Typable.words(60);

    private final RegisterViewModel model;
    private final EntryField code =
            FormFields.quiet(new EntryField(Texts.say("scan or type a code"), CODE), "scan-field");
    private final Label said = Words.wrapped(Words.plain(""));

    ScanBar(RegisterViewModel model) {
        this.model = model;
        code.input().setPromptText(Texts.say("scan or type a code, Enter"));
        code.input().addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        code.textProperty().addListener((observed, before, now) -> model.forgetScan());
        said.setMaxWidth(Double.MAX_VALUE);
        getStyleClass().add("scan-bar");
        getChildren().addAll(code, said);
        tell();
        model.scannedProperty().addListener((observed, before, now) -> tell());
        model.scanProblemProperty().addListener((observed, before, now) -> tell());
    }

    Node field() {
        return code.input();
    }

    /** Puts the keeper's hands on the field, with what is there selected. */
    void takeFocus() {
        code.input().requestFocus();
        code.input().selectAll();
    }

    /** Goes on with a code whose first letter was typed elsewhere. */
    void begin(String letter) {
        code.input().requestFocus();
        code.input().setText(letter);
        code.input().end();
    }

    private void pressed(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER) {
            if (model.scan(code.textProperty().get())) {
                String found = model.scannedProperty().get();
                code.input().clear();
                model.sayScanned(found);
            } else {
                code.input().selectAll();
            }
            event.consume();
        } else if (event.getCode() == KeyCode.ESCAPE
                && !code.textProperty().get().isEmpty()) {
            code.input().clear();
            event.consume();
        }
    }

    private void tell() {
        String problem = model.scanProblemProperty().get();
        String found = model.scannedProperty().get();
        said.setText(!problem.isEmpty() ? problem : found.isEmpty() ? RegisterWords.HOW_TO_SCAN : found);
        said.getStyleClass().removeAll("bad", "ok", "muted");
        said.getStyleClass().add(!problem.isEmpty() ? "bad" : found.isEmpty() ? "muted" : "ok");
    }
}
