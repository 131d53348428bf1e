package org.moultwright.ui.round;

import java.util.Optional;
import java.util.function.IntConsumer;
import javafx.scene.control.ListCell;
import javafx.scene.control.Skin;
import org.jspecify.annotations.Nullable;
import org.moultwright.ui.control.RowSkin;

/** A place for a tray in the list. Its row is made once it has one: a list fills its height with cells that have none. */
final class TrayCell extends ListCell<TrayLine> {
    private final IntConsumer open;
    private Optional<TrayRow> row = Optional.empty();

    /** @param open is given the position of the tray that was pressed */
    TrayCell(IntConsumer open) {
        this.open = open;
        getStyleClass().add("tray-cell");
        setPrefWidth(0);
    }

    @Override
    protected Skin<?> createDefaultSkin() {
        return new RowSkin(this);
    }

    @Override
    protected void updateItem(@Nullable TrayLine line, boolean empty) {
        super.updateItem(line, empty);
        if (line == null || empty) {
            setGraphic(null);
        } else {
            TrayRow shown = row.orElseGet(() -> new TrayRow(() -> open.accept(getIndex())));
            row = Optional.of(shown);
            setGraphic(shown);
            shown.show(line);
        }
    }
}
