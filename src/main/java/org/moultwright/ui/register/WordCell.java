package org.moultwright.ui.register;

import java.util.function.Function;
import javafx.scene.control.TableCell;
import org.jspecify.annotations.Nullable;

/** One word of a pot's row. */
final class WordCell extends TableCell<PotRow, PotRow> {
    private final Function<PotRow, String> text;

    WordCell(Function<PotRow, String> text) {
        this.text = text;
        getStyleClass().add("words");
    }

    @Override
    protected void updateItem(@Nullable PotRow row, boolean empty) {
        super.updateItem(row, empty);
        setText(empty || row == null ? "" : text.apply(row));
    }
}
