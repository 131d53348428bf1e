package org.moultwright.ui.control;

import javafx.beans.binding.DoubleBinding;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableColumnBase;
import javafx.scene.control.TableView;

/** Columns of a table that share its width while all have room for their words; else the table is moved sideways. */
public final class WholeColumns {
    private static final double BAR_EMS = 1.6;

    private WholeColumns() {}

    /** A column no narrower than this. */
    public static void atLeast(TableColumn<?, ?> column, DoubleBinding width) {
        column.prefWidthProperty().bind(width);
        column.minWidthProperty().bind(width);
    }

    /** Keeps the columns of a table whole; all of them are there already. */
    public static void of(TableView<?> table, Em type) {
        Runnable choose = () -> choose(table, type);
        table.widthProperty().addListener(changed -> choose.run());
        type.fontProperty().addListener(changed -> choose.run());
        table.getColumns().forEach(column -> column.minWidthProperty().addListener(changed -> choose.run()));
        choose.run();
    }

    private static void choose(TableView<?> table, Em type) {
        double least = table.getColumns().stream()
                .mapToDouble(TableColumnBase::getMinWidth)
                .sum();
        boolean hasRoom = least + BAR_EMS * type.pixels() <= table.getWidth();
        table.setColumnResizePolicy(
                hasRoom ? TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN : TableView.UNCONSTRAINED_RESIZE_POLICY);
    }
}
