package org.moultwright.ui.label;

import java.util.Optional;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.FormFields;
import org.moultwright.ui.control.NumberField;
import org.moultwright.ui.control.Typable;
import org.moultwright.ui.control.Words;

/** Which sheet labels go on, where it was begun, and how far the printer is off. */
public final class SheetFields extends VBox {
    private static final Typable MILLIMETRES = Typable.signedNumber(2, 1);

    private final SheetForm form;
    private final PreviewModel preview;
    private final ComboBox<LabelSheet> sheet = new ComboBox<>();

    /**
     * @param saveCalibration saves a page that shows how far the printer is off
     * @param printCalibration prints it
     */
    public SheetFields(SheetForm form, PreviewModel preview, Runnable saveCalibration, Runnable printCalibration) {
        this.form = form;
        this.preview = preview;
        Node calibration = FormFields.row(
                shift(Texts.say("shift right, mm"), form.shiftRightProperty(), form.shiftProblemProperty()),
                shift(Texts.say("shift down, mm"), form.shiftDownProperty(), form.shiftProblemProperty()),
                FormFields.field(Texts.say("calibration page"), pages(saveCalibration, printCalibration)),
                FormFields.field(Texts.say("another sheet"), OwnSheetPane.use(form.own())));
        getStyleClass().add("sheet-fields");
        getChildren().addAll(sheetRow(), calibration, new OwnSheetPane(form.own()));
    }

    /** Puts the keeper's hands on the choice of sheets. */
    public void takeFocus() {
        sheet.requestFocus();
    }

    private Node sheetRow() {
        sheet.setConverter(new SheetTitle());
        sheet.setButtonCell(new LaidSheet(form.own()));
        sheet.getItems().setAll(LabelSheets.everything());
        sheet.valueProperty().bindBidirectional(form.sheetProperty());
        sheet.setAccessibleText(Texts.say("sheet"));
        sheet.getStyleClass().add("sheet-choice");
        sheet.setMinWidth(USE_PREF_SIZE);
        sheet.setMaxWidth(Double.MAX_VALUE);
        NumberField first = FormFields.quiet(new NumberField(Texts.say("first free label")), "number-field");
        first.valueProperty().bindBidirectional(form.firstCellProperty());
        first.problemProperty().bind(form.firstCellProblemProperty());
        Label needed = Words.plain("");
        needed.textProperty()
                .bind(preview.jobProperty()
                        .map(job ->
                                job.map(made -> Integer.toString(made.sheets())).orElse("–")));
        needed.getStyleClass().add("form-figure");
        needed.getStyleClass().add("number-field");
        return FormFields.row(
                grows(FormFields.field(Texts.say("sheet"), sheet)),
                FormFields.field(Texts.say("first free label"), first),
                FormFields.field(Texts.say("sheets needed"), needed));
    }

    private static Node pages(Runnable save, Runnable print) {
        Flow pages = new Flow(
                small(Texts.say("As PDF"), Texts.say("save the calibration page as PDF"), save),
                small(Texts.say("On paper"), Texts.say("print the calibration page"), print));
        pages.getStyleClass().add("line");
        return pages;
    }

    private VBox shift(String caption, StringProperty text, ObservableValue<String> problem) {
        EntryField millimetres =
                FormFields.quiet(new EntryField(Texts.say("print {0}", caption), MILLIMETRES), "number-field");
        millimetres.textProperty().bindBidirectional(text);
        millimetres.problemProperty().bind(problem);
        return FormFields.field(caption, millimetres);
    }

    private static Button small(String word, String name, Runnable action) {
        Button button = Buttons.taking(word, action);
        button.setAccessibleText(name);
        button.getStyleClass().add("small-button");
        return button;
    }

    private static Node grows(Node node) {
        HBox.setHgrow(node, Priority.ALWAYS);
        return node;
    }

    /** What is shown as laid in: the sheet chosen, unless its dimensions are the keeper's own. */
    private static final class LaidSheet extends ListCell<LabelSheet> {
        private final OwnSheet own;

        LaidSheet(OwnSheet own) {
            this.own = own;
            own.usedProperty().addListener((observed, before, now) -> show());
        }

        @Override
        protected void updateItem(LabelSheet sheet, boolean empty) {
            super.updateItem(sheet, empty);
            show();
        }

        private void show() {
            String chosen =
                    Optional.ofNullable(getItem()).map(LabelSheet::title).orElse("");
            setText(own.isUsed() ? OwnSheetPane.NAME : chosen);
        }
    }

    /** Sheets are shown by their dimensions and only ever chosen. */
    private static final class SheetTitle extends StringConverter<LabelSheet> {
        @Override
        public String toString(LabelSheet sheet) {
            return sheet.title();
        }

        @Override
        public LabelSheet fromString(String title) {
            return LabelSheets.everything().stream()
                    .filter(sheet -> sheet.title().equals(title))
                    .findFirst()
                    .orElse(LabelSheets.A4_3X8);
        }
    }
}
