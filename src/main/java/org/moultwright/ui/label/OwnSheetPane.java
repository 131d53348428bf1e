package org.moultwright.ui.label;

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
import org.moultwright.ui.control.Typable;
import org.moultwright.ui.control.Words;

/** The dimensions of a sheet of the keeper's own; they are made and take room when they are asked for. */
final class OwnSheetPane extends VBox {
    static final String NAME = Texts.say("Own dimensions");

    private static final Typable COUNT = Typable.wholeNumber(3);
    private static final Typable NUMBER = Typable.number(4, SheetDimension.DECIMALS);
    private static final int IN_A_ROW = 5;

    private final OwnSheet own;

    OwnSheetPane(OwnSheet own) {
        this.own = own;
        getStyleClass().add("named-field");
        managedProperty().bind(own.usedProperty());
        own.usedProperty().subscribe(isUsed -> {
            if (isUsed && getChildren().isEmpty()) {
                getChildren().addAll(papers(), dimensions());
            }
        });
        visibleProperty().bind(own.usedProperty());
    }

    /** Lays in a sheet of one's own, or the one chosen again. */
    static ToggleChip use(OwnSheet own) {
        ToggleChip use = new ToggleChip(NAME);
        use.getStyleClass().add("small-chip");
        use.selectedProperty().bindBidirectional(own.usedProperty());
        return use;
    }

    private Node dimensions() {
        Label problem = Words.wrapped(Words.styled("", "problem"));
        problem.textProperty().bind(own.problemProperty());
        problem.managedProperty().bind(own.problemProperty().isNotEmpty());
        VBox dimensions = new VBox(row(0), row(IN_A_ROW), problem);
        dimensions.getStyleClass().addAll("entry", "own-sheet");
        return dimensions;
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
        EntryField field =
                FormFields.quiet(new EntryField(caption, dimension.isCount() ? COUNT : NUMBER), "short-field");
        field.textProperty().bindBidirectional(own.textProperty(dimension));
        own.faultyProperty()
                .subscribe(faulty -> field.mark(
                        faulty.contains(dimension) ? own.problemProperty().get() : ""));
        return FormFields.field(caption, field);
    }
}
