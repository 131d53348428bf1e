package org.moultwright.ui.potting;

import java.util.regex.Pattern;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.FormFields;
import org.moultwright.ui.control.Words;
import org.moultwright.ui.label.LabelWords;
import org.moultwright.ui.label.SheetFields;

/** The codes given, and the sheet they go on. */
final class LabelCard extends VBox {
    private static final Pattern PREFIX = Pattern.compile("[0-9A-Za-z]{0,5}");
    static final Pattern POT_SIZE = Pattern.compile(".{0,16}");

    private final PottingViewModel model;

    LabelCard(PottingViewModel model) {
        this.model = model;
        getStyleClass().add("card");
        getChildren()
                .addAll(
                        Words.cardTitle(Texts.say("Codes and labels")),
                        codeRow(),
                        new SheetFields(
                                model.form().sheet(),
                                model.preview(),
                                model::saveCalibration,
                                model::printCalibration));
    }

    private Node codeRow() {
        LabelForm form = model.form();
        EntryField prefix = FormFields.quiet(new EntryField(Texts.say("codes begin with"), PREFIX), "short-field");
        prefix.textProperty().bindBidirectional(form.prefixProperty());
        prefix.problemProperty().bind(form.prefixProblemProperty());
        Label codes = Words.plain("");
        codes.textProperty()
                .bind(model.preview()
                        .jobProperty()
                        .map(job -> job.map(LabelWords::codes).orElse("–")));
        codes.getStyleClass().add("form-figure");
        EntryField potSize =
                FormFields.quiet(new EntryField(Texts.say("pot size, on the label"), POT_SIZE), "short-field");
        potSize.textProperty().bindBidirectional(form.potSizeProperty());
        potSize.input().setPromptText(Texts.say("30 ml"));
        return FormFields.row(
                FormFields.field(Texts.say("pot size of all"), potSize),
                FormFields.field(Texts.say("codes begin with"), prefix),
                grows(FormFields.field(Texts.say("codes, each with its check character"), codes)));
    }

    private static Node grows(Node node) {
        HBox.setHgrow(node, Priority.ALWAYS);
        return node;
    }
}
