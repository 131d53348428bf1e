package org.moultwright.ui.round;

import java.util.List;
import java.util.function.Function;
import javafx.beans.InvalidationListener;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.moultwright.domain.Cause;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Words;
import org.moultwright.workflow.RoundSheet;

/** More of the mould found: how far it had gone, what was done, how many it cost. No room while none was found. */
final class MouldPane extends VBox {
    private final OpenSheet sheet;

    MouldPane(OpenSheet sheet) {
        this.sheet = sheet;
        getStyleClass().add("loss-pane");
        managedProperty().bind(visibleProperty());
        InvalidationListener show = changed -> show();
        sheet.fields().mouldProperty().addListener(show);
        sheet.fields().losses().addListener(show);
        sheet.keys().promptProperty().addListener(show);
        show();
    }

    private void show() {
        getChildren().clear();
        sheet.fields().mouldProperty().get().ifPresent(this::show);
        setVisible(!getChildren().isEmpty());
    }

    private void show(RoundSheet.Mould mould) {
        FlowPane chips = KeyedChip.row();
        chips.getChildren().add(Words.muted(Texts.say("how far")));
        add(
                chips,
                KeyedWord.MOULD_EXTENT,
                mould.extent(),
                word -> new RoundSheet.Mould(mould.where(), word, mould.action()));
        FlowPane done = KeyedChip.row();
        done.getChildren().add(Words.muted(Texts.say("done")));
        add(
                done,
                KeyedWord.MOULD_ACTION,
                mould.action(),
                word -> new RoundSheet.Mould(mould.where(), mould.extent(), word));
        getChildren()
                .addAll(Words.strong(Texts.say("Mould on {0}, {1}", Texts.say(mould.where()), lost())), chips, done);
    }

    private void add(FlowPane row, List<KeyedWord> words, String chosen, Function<String, RoundSheet.Mould> told) {
        boolean asked = sheet.keys().promptProperty().get() instanceof Prompt.MouldMore;
        for (KeyedWord word : words) {
            Runnable choose = () -> sheet.fields().tellMould(told.apply(word.text()));
            ToggleChip chip = asked ? KeyedChip.of(word, choose) : KeyedChip.plain(word.shown(), choose);
            chip.setSelected(word.text().equals(chosen));
            row.getChildren().add(chip);
        }
    }

    private String lost() {
        int lost = sheet.fields().losses().stream()
                .filter(loss -> loss.cause().equals(Cause.MOULD))
                .mapToInt(RoundSheet.Loss::count)
                .sum();
        return lost == 0 ? Texts.say("none lost to it") : Texts.say("{0} lost to it", lost);
    }
}
