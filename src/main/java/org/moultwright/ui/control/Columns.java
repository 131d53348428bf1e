package org.moultwright.ui.control;

import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** Parts of a page side by side; where there is no room for that, one above the other, each as wide as the page. */
public final class Columns extends Flow {
    public Columns(Node... parts) {
        super(parts);
    }

    /** Parts that share the width equally. */
    public static Columns even(Region... parts) {
        for (Region part : parts) {
            part.setPrefWidth(1);
            HBox.setHgrow(part, Priority.ALWAYS);
        }
        Columns columns = new Columns(parts);
        columns.getStyleClass().add("card-columns");
        return columns;
    }

    @Override
    boolean fillsLines() {
        return true;
    }
}
