package org.moultwright.ui.control;

import javafx.scene.layout.HBox;
import org.moultwright.domain.Stage;

/** A stage's colour with its word: in legends, lists and rows. */
public final class StageChip extends HBox {
    public StageChip(Swatch swatch, String word) {
        super(swatch, Words.plain(word));
        getStyleClass().add("stage-chip");
        setMinWidth(USE_PREF_SIZE);
        setAccessibleText(word);
    }

    public StageChip(Stage stage, String word) {
        this(Swatch.of(stage), word);
    }
}
