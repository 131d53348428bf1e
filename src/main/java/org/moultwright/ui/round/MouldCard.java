package org.moultwright.ui.round;

import java.util.List;
import java.util.function.Function;
import javafx.beans.InvalidationListener;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.moultwright.domain.Cause;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Words;
import org.moultwright.workflow.RoundSheet;

/** Mould: where, how far, what was done; how many it cost is told from the dead. */
final class MouldCard extends VBox {
    private final FlowPane chips = new FlowPane();
    private final OpenSheet sheet;

    MouldCard(OpenSheet sheet) {
        this.sheet = sheet;
        HBox title = new HBox(Words.cardTitle("Mould"), new KeyCap("M"));
        title.getStyleClass().add("key-hint");
        chips.getStyleClass().addAll("chips", "tight");
        getStyleClass().add("card");
        getChildren().addAll(title, chips);
        InvalidationListener show = changed -> show();
        sheet.fields().mouldProperty().addListener(show);
        sheet.fields().losses().addListener(show);
        sheet.keys().promptProperty().addListener(show);
        show();
    }

    private void show() {
        chips.getChildren().clear();
        sheet.fields().mouldProperty().get().ifPresentOrElse(this::showFound, this::showNone);
    }

    private void showNone() {
        boolean asked = sheet.keys().promptProperty().get() instanceof Prompt.MouldWhere;
        ToggleChip none = chip("none seen", () -> sheet.keys().close());
        none.setSelected(!asked);
        chips.getChildren().add(none);
        for (KeyedWord word : KeyedWord.MOULD_WHERE) {
            Runnable choose = () -> sheet.keys().mouldAt(word);
            chips.getChildren().add(asked ? KeyedChip.of(word, choose) : chip(word.text(), choose));
        }
    }

    private void showFound(RoundSheet.Mould mould) {
        ToggleChip where =
                chip("on " + mould.where() + "  ×", () -> sheet.fields().withdrawMould());
        where.setSelected(true);
        where.setAccessibleText("mould on " + mould.where() + ", take back");
        chips.getChildren().add(where);
        add(
                "how far",
                KeyedWord.MOULD_EXTENT,
                mould.extent(),
                word -> new RoundSheet.Mould(mould.where(), word, mould.action()));
        add(
                "done",
                KeyedWord.MOULD_ACTION,
                mould.action(),
                word -> new RoundSheet.Mould(mould.where(), mould.extent(), word));
        chips.getChildren().add(Words.caption(lost()));
    }

    private void add(String title, List<KeyedWord> words, String chosen, Function<String, RoundSheet.Mould> told) {
        boolean asked = sheet.keys().promptProperty().get() instanceof Prompt.MouldMore;
        Label caption = Words.caption(title);
        caption.prefWidthProperty().bind(chips.widthProperty());
        chips.getChildren().add(caption);
        for (KeyedWord word : words) {
            Runnable choose = () -> sheet.fields().tellMould(told.apply(word.text()));
            ToggleChip chip = asked ? KeyedChip.of(word, choose) : chip(word.text(), choose);
            chip.setSelected(word.text().equals(chosen));
            chips.getChildren().add(chip);
        }
    }

    private String lost() {
        int lost = sheet.fields().losses().stream()
                .filter(loss -> loss.cause().equals(Cause.MOULD))
                .mapToInt(RoundSheet.Loss::count)
                .sum();
        return lost == 0 ? "none lost to it" : lost + " lost to it";
    }

    private static ToggleChip chip(String words, Runnable action) {
        ToggleChip chip = new ToggleChip(words);
        chip.setFocusTraversable(false);
        chip.setOnAction(event -> action.run());
        return chip;
    }
}
