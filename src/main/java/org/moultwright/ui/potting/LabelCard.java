package org.moultwright.ui.potting;

import java.util.regex.Pattern;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.moultwright.domain.label.LabelSheet;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.FormFields;
import org.moultwright.ui.control.NumberField;
import org.moultwright.ui.control.Words;

/** The codes given, and the sheet they go on. */
final class LabelCard extends VBox {
    private static final Pattern PREFIX = Pattern.compile("[0-9A-Za-z]{0,5}");
    private static final Pattern POT_SIZE = Pattern.compile(".{0,16}");
    private static final Pattern MILLIMETRES = Pattern.compile("[-−]?[0-9]?[.,]?[0-9]?");

    private final PottingViewModel model;

    LabelCard(PottingViewModel model) {
        this.model = model;
        getStyleClass().add("card");
        getChildren()
                .addAll(
                        Words.cardTitle("Codes and labels"),
                        codeRow(),
                        sheetRow(),
                        new OwnSheetPane(model.form().own()));
    }

    private Node codeRow() {
        LabelForm form = model.form();
        EntryField prefix = FormFields.quiet(new EntryField("codes begin with", PREFIX), "short-field");
        prefix.textProperty().bindBidirectional(form.prefixProperty());
        prefix.problemProperty().bind(form.prefixProblemProperty());
        Label codes = Words.plain("");
        codes.textProperty()
                .bind(model.preview()
                        .jobProperty()
                        .map(job -> job.map(PottingWords::codes).orElse("–")));
        codes.getStyleClass().add("form-figure");
        EntryField potSize = FormFields.quiet(new EntryField("pot size, on the label", POT_SIZE), "short-field");
        potSize.textProperty().bindBidirectional(form.potSizeProperty());
        potSize.input().setPromptText("30 ml");
        return FormFields.row(
                FormFields.field("pot size", potSize),
                FormFields.field("codes begin with", prefix),
                grows(FormFields.field("codes, each with its check character", codes)));
    }

    private Node sheetRow() {
        LabelForm form = model.form();
        ComboBox<LabelSheet> sheet = new ComboBox<>();
        sheet.setConverter(new SheetTitle());
        sheet.getItems().setAll(LabelSheets.all());
        sheet.valueProperty().bindBidirectional(form.sheetProperty());
        sheet.setAccessibleText("sheet");
        sheet.setMaxWidth(Double.MAX_VALUE);
        NumberField first = FormFields.quiet(new NumberField("first free label"), "number-field");
        first.valueProperty().bindBidirectional(form.firstCellProperty());
        first.problemProperty().bind(form.firstCellProblemProperty());
        Label needed = Words.plain("");
        needed.textProperty()
                .bind(model.preview()
                        .jobProperty()
                        .map(job ->
                                job.map(made -> Integer.toString(made.sheets())).orElse("–")));
        needed.getStyleClass().add("form-figure");
        needed.getStyleClass().add("number-field");
        return FormFields.row(
                grows(FormFields.field("sheet", sheet)),
                FormFields.field("first free label", first),
                FormFields.field("sheets needed", needed),
                shift("shift right, mm", form.shiftRightProperty(), form.shiftProblemProperty()),
                shift("shift down, mm", form.shiftDownProperty(), form.shiftProblemProperty()));
    }

    private VBox shift(String caption, StringProperty text, ObservableValue<String> problem) {
        EntryField millimetres = FormFields.quiet(new EntryField("print " + caption, MILLIMETRES), "number-field");
        millimetres.textProperty().bindBidirectional(text);
        millimetres.problemProperty().bind(problem);
        return FormFields.field(caption, millimetres);
    }

    private static Node grows(Node node) {
        HBox.setHgrow(node, Priority.ALWAYS);
        return node;
    }

    /** Sheets are shown by their dimensions and only ever chosen. */
    private static final class SheetTitle extends StringConverter<LabelSheet> {
        @Override
        public String toString(LabelSheet sheet) {
            return sheet.title();
        }

        @Override
        public LabelSheet fromString(String title) {
            return LabelSheets.all().stream()
                    .filter(sheet -> sheet.title().equals(title))
                    .findFirst()
                    .orElse(LabelSheets.A4_3X8);
        }
    }
}
