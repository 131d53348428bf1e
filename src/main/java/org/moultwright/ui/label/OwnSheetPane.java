package org.moultwright.ui.label;

import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.moultwright.domain.label.Paper;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.FormFields;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Words;

/** The dimensions of a sheet of the keeper's own; they take no room until they are asked for. */
final class OwnSheetPane extends VBox {
    private static final Pattern NUMBER = Pattern.compile("[0-9]{0,3}([.,][0-9]{0,3})?");
    private static final int IN_A_ROW = 4;

    private final OwnSheet own;

    OwnSheetPane(OwnSheet own) {
        this.own = own;
        ToggleChip use = new ToggleChip(Texts.say("Own dimensions"));
        use.getStyleClass().add("small-chip");
        use.selectedProperty().bindBidirectional(own.usedProperty());
        Flow head = new Flow(use, papers());
        head.getStyleClass().add("card-head");
        Label problem = Words.wrapped(Words.styled("", "problem"));
        problem.textProperty().bind(own.problemProperty());
        problem.managedProperty().bind(own.problemProperty().isNotEmpty());
        VBox dimensions = new VBox(row(0), row(IN_A_ROW), row(2 * IN_A_ROW), problem);
        dimensions.getStyleClass().addAll("entry", "own-sheet");
        dimensions.visibleProperty().bind(own.usedProperty());
        dimensions.managedProperty().bind(own.usedProperty());
        getStyleClass().add("named-field");
        getChildren().addAll(head, dimensions);
    }

    private Node papers() {
        Flow papers = new Flow();
        papers.getStyleClass().add("span-chips");
        for (Paper paper : Paper.values()) {
            Button button = Buttons.secondary(paper.title(), () -> own.choosePaper(paper));
            button.getStyleClass().add("small-button");
            papers.getChildren().add(button);
        }
        ToggleChip round = new ToggleChip(Texts.say("Round labels"));
        round.getStyleClass().add("small-chip");
        round.selectedProperty().bindBidirectional(own.roundProperty());
        papers.getChildren().add(round);
        papers.visibleProperty().bind(own.usedProperty());
        papers.managedProperty().bind(own.usedProperty());
        return papers;
    }

    private HBox row(int first) {
        return FormFields.row(Stream.of(SheetDimension.values())
                .skip(first)
                .limit(IN_A_ROW)
                .map(this::field)
                .toArray(Node[]::new));
    }

    private Node field(SheetDimension dimension) {
        String caption = dimension.isCount() ? dimension.word() : dimension.word() + ", mm";
        EntryField field = FormFields.quiet(new EntryField(caption, NUMBER), "short-field");
        field.textProperty().bindBidirectional(own.textProperty(dimension));
        return FormFields.field(caption, field);
    }
}
