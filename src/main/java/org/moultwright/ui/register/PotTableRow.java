package org.moultwright.ui.register;

import javafx.css.PseudoClass;
import javafx.scene.control.TableRow;
import javafx.scene.input.MouseEvent;
import org.jspecify.annotations.Nullable;

/** One pot's row: dressed as looked at and as selected. A click looks at it; with Ctrl or Shift it selects as well. */
final class PotTableRow extends TableRow<PotRow> {
    private static final PseudoClass CURRENT = PseudoClass.getPseudoClass("current");
    private static final PseudoClass MARKED = PseudoClass.getPseudoClass("marked");
    private static final PseudoClass GONE = PseudoClass.getPseudoClass("gone");

    private final RegisterViewModel model;

    PotTableRow(RegisterViewModel model) {
        this.model = model;
        model.cursorProperty().addListener((observed, before, now) -> dress());
        model.marks().revisionProperty().addListener((observed, before, now) -> dress());
        addEventFilter(MouseEvent.MOUSE_PRESSED, this::pressed);
    }

    @Override
    protected void updateItem(@Nullable PotRow row, boolean empty) {
        super.updateItem(row, empty);
        dress();
    }

    private void dress() {
        PotRow row = getItem();
        boolean isPot = row != null && !isEmpty();
        pseudoClassStateChanged(
                CURRENT,
                isPot && model.cursorProperty().get().filter(row::equals).isPresent());
        pseudoClassStateChanged(MARKED, isPot && model.marks().has(row.code()));
        pseudoClassStateChanged(GONE, isPot && !row.isAlive());
    }

    private void pressed(MouseEvent event) {
        PotRow row = getItem();
        if (row == null || isEmpty()) {
            return;
        }
        getTableView().requestFocus();
        if (event.isShiftDown()) {
            model.markUpTo(row);
        } else if (event.isShortcutDown() || event.getX() < MarkCell.WIDTH_PIXELS) {
            model.marks().toggle(row.code());
        }
        model.look(row);
        event.consume();
    }
}
