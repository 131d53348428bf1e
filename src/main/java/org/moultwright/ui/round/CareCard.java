package org.moultwright.ui.round;

import javafx.collections.SetChangeListener;
import javafx.scene.layout.FlowPane;
import org.moultwright.language.Texts;
import org.moultwright.ui.control.Card;
import org.moultwright.ui.control.ToggleChip;

/** What was done for the tray. */
final class CareCard {
    private CareCard() {}

    static Card of(OpenSheet sheet) {
        FlowPane chips = KeyedChip.row();
        for (KeyedWord word : KeyedWord.CARE) {
            ToggleChip chip = KeyedChip.of(word, () -> sheet.fields().toggleCare(word.text()));
            chip.setSelected(sheet.fields().care().contains(word.text()));
            sheet.fields().care().addListener((SetChangeListener<String>)
                    change -> chip.setSelected(change.getSet().contains(word.text())));
            chips.getChildren().add(chip);
        }
        Card card = Card.titled(Texts.say("Care"), chips);
        card.setMinHeight(Card.USE_PREF_SIZE);
        return card;
    }
}
