package org.moultwright.ui.potting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.moultwright.language.Texts;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.control.Buttons;
import org.moultwright.ui.control.EntryField;
import org.moultwright.ui.control.FormFields;
import org.moultwright.ui.control.NumberField;
import org.moultwright.ui.control.Words;

/** One tray on the bench: what it holds, and how many of it go into pots of which size, a line for each size. */
final class TakingRow {
    static final int COLUMNS = 7;

    private final PottingViewModel model;
    private final String name;
    private final Taking taking;
    private final Runnable addSize;
    private final List<NumberField> fields = new ArrayList<>();
    private final List<EntryField> sizes = new ArrayList<>();

    /** @param name what the tray is called here */
    TakingRow(PottingViewModel model, String name, Taking taking, Runnable addSize) {
        this.model = model;
        this.name = name;
        this.taking = taking;
        this.addSize = addSize;
    }

    Taking taking() {
        return taking;
    }

    boolean hasFocus() {
        return Stream.concat(fields.stream(), sizes.stream())
                .anyMatch(field -> field.input().isFocused());
    }

    void focusFirst() {
        takeFocus(fields.get(0));
    }

    /** Puts the keeper's hands on the number of the size added last. */
    void focusLast() {
        takeFocus(fields.get(fields.size() - 1));
    }

    /** Puts it into a grid from a line on, and says which line is free after it. */
    int addTo(GridPane grid, int line) {
        Vocabulary names = model.vocabularyProperty().get();
        String words = PottingWords.ready(taking, names);
        Label ready = taking.ready() > 0 ? Words.plain(words) : Words.muted(words);
        ready.getStyleClass().add("bench-ready");
        grid.addRow(
                line,
                Words.whole(Words.styled(taking.tray().tray(), "tray-code")),
                Words.whole(Words.muted(taking.tray().place())),
                ready);
        int next = line;
        for (Portion portion : taking.portions()) {
            addPortion(grid, next, portion);
            if (next == line) {
                grid.add(stay(names), 5, line);
                grid.add(anotherSize(), 6, line);
            }
            next++;
        }
        return next;
    }

    private void addPortion(GridPane grid, int line, Portion portion) {
        boolean isFirst = fields.isEmpty();
        String called = isFirst ? name : Texts.say("{0}, size {1}", name, fields.size() + 1);
        NumberField taken = new NumberField(Texts.say("taken from {0}", called));
        taken.valueProperty().bindBidirectional(portion.takenProperty());
        if (isFirst) {
            taken.problemProperty().bind(taking.problemProperty());
        }
        EntryField size = FormFields.quiet(
                new EntryField(Texts.say("pot size for {0}", called), LabelCard.POT_SIZE), "number-field");
        size.textProperty().bindBidirectional(portion.potSizeProperty());
        size.input().promptTextProperty().bind(model.sizeHint());
        GridPane.setFillHeight(taken, false);
        GridPane.setFillHeight(size, false);
        grid.add(taken, 3, line);
        grid.add(size, 4, line);
        fields.add(taken);
        sizes.add(size);
    }

    private Label stay(Vocabulary names) {
        Label stay = Words.wrapped(Words.muted(""));
        stay.getStyleClass().add("bench-stay");
        stay.setMaxWidth(Double.MAX_VALUE);
        GridPane.setHgrow(stay, Priority.ALWAYS);
        Runnable tell = () -> stay.setText(PottingWords.stay(taking, names, model.days(), model.now()));
        taking.portions()
                .forEach(portion -> portion.takenProperty().addListener((observed, before, now) -> tell.run()));
        tell.run();
        return stay;
    }

    /** By keyboard it is a key of the screen, so that Tab goes from number to number. */
    private Button anotherSize() {
        Button another = Buttons.secondary(Texts.say("Other size"), addSize);
        another.setAccessibleText(Texts.say("another pot size for {0}", name));
        another.getStyleClass().add("small-button");
        another.setMinWidth(Region.USE_PREF_SIZE);
        another.setFocusTraversable(false);
        return another;
    }

    private static void takeFocus(NumberField field) {
        field.input().requestFocus();
        field.input().selectAll();
    }
}
