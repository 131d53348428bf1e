package org.moultwright.ui.register;

import javafx.scene.control.TableCell;
import org.jspecify.annotations.Nullable;
import org.kordamp.ikonli.javafx.FontIcon;
import org.moultwright.ui.control.Sign;

/** Whether a pot is selected, as a box ticked or not. */
final class MarkCell extends TableCell<PotRow, PotRow> {
    static final double WIDTH_PIXELS = 34;

    private final RegisterViewModel model;
    private final FontIcon ticked = FontIcon.of(Sign.TICKED, 18);
    private final FontIcon open = FontIcon.of(Sign.NOT_TICKED, 18);

    MarkCell(RegisterViewModel model) {
        this.model = model;
        ticked.getStyleClass().add("accent");
        open.getStyleClass().add("muted");
        getStyleClass().add("mark-cell");
        model.marks().revisionProperty().addListener((observed, before, now) -> show());
    }

    @Override
    protected void updateItem(@Nullable PotRow row, boolean empty) {
        super.updateItem(row, empty);
        show();
    }

    private void show() {
        PotRow row = getItem();
        setGraphic(row == null || isEmpty() ? null : model.marks().has(row.code()) ? ticked : open);
    }
}
