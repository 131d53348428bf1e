package org.moultwright.ui.potting;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javafx.beans.InvalidationListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.moultwright.domain.code.CodeField;
import org.moultwright.domain.code.CodePattern;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.FormFields;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Typable;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.label.SheetFields;

/** How codes are made, and the sheets they go on. */
final class LabelCard extends VBox {
    private static final Typable TYPABLE = Typable.words(40);
    static final Typable POT_SIZE = Typable.words(16);

    private final PottingViewModel model;
    private final BenchLabels labels;
    private final FlowPane sizes = new FlowPane();
    private final Flow parts = new Flow();
    private final StackPane sheet = new StackPane();
    private final Map<SheetWay, SheetFields> fields = new HashMap<>();

    LabelCard(PottingViewModel model) {
        this.model = model;
        this.labels = model.labels();
        parts.getStyleClass().add("line");
        sizes.getStyleClass().addAll("chips", "tight");
        getStyleClass().add("card");
        getChildren()
                .addAll(
                        Words.cardTitle(Texts.say("Codes and labels")),
                        codeRow(),
                        parts,
                        FormFields.field(
                                Texts.say("on the label"),
                                new DesignRow(model.form().designProperty())),
                        sizes,
                        sheet);
        InvalidationListener show = changed -> showSheet();
        Stream.of(labels.sizesProperty(), labels.shownProperty(), labels.shownSizeProperty())
                .forEach(what -> what.addListener(show));
        showSheet();
    }

    private Node codeRow() {
        LabelForm form = model.form();
        EntryField pattern = FormFields.quiet(new EntryField(Texts.say("pattern of codes"), TYPABLE), "pattern-field");
        pattern.textProperty().bindBidirectional(form.patternProperty());
        pattern.problemProperty().bind(form.patternProblemProperty());
        fieldsInto(pattern.input());
        Label codes = Words.wrapped(Words.plain(""));
        codes.textProperty().bind(labels.codesProperty());
        codes.getStyleClass().add("form-figure");
        EntryField potSize =
                FormFields.quiet(new EntryField(Texts.say("pot size, on the label"), POT_SIZE), "short-field");
        potSize.textProperty().bindBidirectional(form.potSizeProperty());
        potSize.input().setPromptText(Texts.say("30 ml"));
        return FormFields.row(
                FormFields.field(Texts.say("pot size of all"), potSize),
                FormFields.field(Texts.say("pattern of codes"), pattern),
                grows(FormFields.field(Texts.say("codes, each with its check character"), codes)));
    }

    /** What can stand in a pattern, to be put in by the mouse; by keyboard it is typed. */
    private void fieldsInto(TextField input) {
        parts.getChildren().add(Words.muted(Texts.say("put in")));
        Stream.concat(Stream.of(CodeField.values()).map(CodeField::written), Stream.of(CodePattern.NUMBER))
                .forEach(written -> {
                    Button put = Buttons.secondary(written, () -> {
                        input.requestFocus();
                        input.replaceSelection(written);
                    });
                    put.setAccessibleText(Texts.say("put {0} into the pattern of codes", written));
                    put.getStyleClass().add("small-button");
                    put.setFocusTraversable(false);
                    parts.getChildren().add(put);
                });
    }

    /** Pots of one size need no choosing. */
    private void showSheet() {
        List<String> all = labels.sizesProperty().get();
        sizes.setManaged(all.size() > 1);
        sizes.setVisible(all.size() > 1);
        sizes.getChildren().setAll(Words.muted(Texts.say("labels of")));
        all.forEach(size -> sizes.getChildren().add(chip(size)));
        sizes.getChildren().add(ownSheet());
        sheet.getChildren().setAll(fields.computeIfAbsent(labels.shownProperty().get(), this::fieldsOf));
    }

    private SheetFields fieldsOf(SheetWay way) {
        return new SheetFields(way.form(), way.preview(), model::saveCalibration, model::printCalibration);
    }

    private ToggleChip chip(String size) {
        ToggleChip chip = new ToggleChip(PottingWords.size(size));
        chip.setAccessibleText(Texts.say("labels of {0}", PottingWords.size(size)));
        chip.setSelected(size.equals(labels.shownSizeProperty().get()));
        chip.setOnAction(event -> {
            labels.showSheetOf(size);
            showSheet();
        });
        return chip;
    }

    private ToggleChip ownSheet() {
        String size = labels.shownSizeProperty().get();
        ToggleChip own = new ToggleChip(Texts.say("On a sheet of their own"));
        own.setAccessibleText(Texts.say("{0} on a sheet of their own", PottingWords.size(size)));
        own.setSelected(labels.sheets().isOwn(size));
        own.setOnAction(event -> {
            labels.setOwnSheet(own.isSelected());
            showSheet();
        });
        return own;
    }

    private static Node grows(Node node) {
        HBox.setHgrow(node, Priority.ALWAYS);
        return node;
    }
}
