package org.moultwright.ui.round;

import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Flow;
import org.moultwright.ui.control.KeyCap;
import org.moultwright.ui.control.ToggleChip;
import org.moultwright.ui.control.Words;
import org.moultwright.workflow.RoundSheet;

/** Whether mould was seen, and where. */
final class MouldCard extends VBox {
    private final FlowPane chips = KeyedChip.row();
    private final OpenSheet sheet;

    MouldCard(OpenSheet sheet) {
        this.sheet = sheet;
        Flow title = new Flow(Words.cardTitle(Texts.say("Mould")), new KeyCap("M"));
        title.getStyleClass().add("key-hint");
        getStyleClass().add("card");
        setMinHeight(USE_PREF_SIZE);
        getChildren().addAll(title, chips);
        InvalidationListener show = changed -> show();
        sheet.fields().mouldProperty().addListener(show);
        sheet.keys().promptProperty().addListener(show);
        show();
    }

    private void show() {
        Optional<String> found = sheet.fields().mouldProperty().get().map(RoundSheet.Mould::where);
        boolean asked = sheet.keys().promptProperty().get() instanceof Prompt.MouldWhere;
        ToggleChip none = KeyedChip.plain(Texts.say("none seen"), sheet.fields()::withdrawMould);
        none.setSelected(found.isEmpty() && !asked);
        chips.getChildren().setAll(none);
        for (KeyedWord word : KeyedWord.MOULD_WHERE) {
            Runnable choose = () -> sheet.keys().mouldAt(word);
            ToggleChip chip = asked ? KeyedChip.of(word, choose) : KeyedChip.plain(word.shown(), choose);
            chip.setSelected(found.filter(word.text()::equals).isPresent());
            chips.getChildren().add(chip);
        }
    }
}
