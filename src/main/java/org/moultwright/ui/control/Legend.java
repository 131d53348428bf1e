package org.moultwright.ui.control;

import javafx.scene.layout.FlowPane;

/** The colours of a chart with their words, in the order they are stacked. */
public final class Legend extends FlowPane {
    public Legend(StageChip... chips) {
        super(chips);
        getStyleClass().add("legend");
    }
}
