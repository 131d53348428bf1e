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
import org.moultwright.ui.control.NumberField;
import org.moultwright.ui.control.Words;

/** The codes given, and the sheet they go on. */
final class LabelCard extends VBox {
    private static final Pattern PREFIX = Pattern.compile("[0-9A-Za-z]{0,5}");
    private static final Pattern MILLIMETRES = Pattern.compile("[-−]?[0-9]?[.,]?[0-9]?");

    private final PottingViewModel model;

    LabelCard(PottingViewModel model) {
        this.model = model;
        getStyleClass().add("card");
        getChildren().addAll(Words.cardTitle("Codes and labels"), codeRow(), sheetRow());
    }

    private Node codeRow() {
        LabelForm form = model.form();
        EntryField prefix = quiet(new EntryField("codes begin with", PREFIX), "short-field");
        prefix.textProperty().bindBidirectional(form.prefixProperty());
        prefix.problemProperty().bind(form.prefixProblemProperty());
        Label codes = Words.plain("");
        codes.textProperty()
                .bind(model.preview()
                        .jobProperty()
                        .map(job -> job.map(PottingWords::codes).orElse("–")));
        codes.getStyleClass().add("form-figure");
        return row(
                field("codes begin with", prefix),
                grows(field("codes, each with its check character", codes)),
                shift("shift right, mm", form.shiftRightProperty(), form.shiftProblemProperty()),
                shift("shift down, mm", form.shiftDownProperty(), form.shiftProblemProperty()));
    }

    private Node sheetRow() {
        LabelForm form = model.form();
        ComboBox<LabelSheet> sheet = new ComboBox<>();
        sheet.setConverter(new SheetTitle());
        sheet.getItems().setAll(LabelSheets.all());
        sheet.valueProperty().bindBidirectional(form.sheetProperty());
        sheet.setAccessibleText("sheet");
        sheet.setMaxWidth(Double.MAX_VALUE);
        NumberField first = quiet(new NumberField("first free label"), "short-field");
        first.valueProperty().bindBidirectional(form.firstCellProperty());
        first.problemProperty().bind(form.firstCellProblemProperty());
        Label needed = Words.plain("");
        needed.textProperty()
                .bind(model.preview()
                        .jobProperty()
                        .map(job ->
                                job.map(made -> Integer.toString(made.sheets())).orElse("–")));
        needed.getStyleClass().add("form-figure");
        return row(grows(field("sheet", sheet)), field("first free label", first), field("sheets needed", needed));
    }

    private VBox shift(String caption, StringProperty text, ObservableValue<String> problem) {
        EntryField millimetres = quiet(new EntryField("print " + caption, MILLIMETRES), "short-field");
        millimetres.textProperty().bindBidirectional(text);
        millimetres.problemProperty().bind(problem);
        return field(caption, millimetres);
    }

    /** The field in the size of body text. */
    private static <F extends EntryField> F quiet(F field, String width) {
        field.getStyleClass().remove("big-entry");
        field.getStyleClass().add(width);
        return field;
    }

    private static VBox field(String caption, Node field) {
        VBox named = new VBox(Words.caption(caption), field);
        named.getStyleClass().add("named-field");
        return named;
    }

    private static Node grows(Node node) {
        HBox.setHgrow(node, Priority.ALWAYS);
        return node;
    }

    private static HBox row(Node... fields) {
        HBox row = new HBox(fields);
        row.getStyleClass().add("form-row");
        return row;
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
