package org.moultwright.ui.chart;

import javafx.scene.text.Font;

/** The kinds of type in charts, in parts of the size of running text. */
enum Type {
    CAPTION("Open Sans", 0.867),
    CAPTION_STRONG("Open Sans Semibold", 0.867),
    BODY("Open Sans", 1),
    STRONG("Open Sans Semibold", 1);

    private final String family;
    private final double em;

    Type(String family, double em) {
        this.family = family;
        this.em = em;
    }

    Font font(double textPixels) {
        return Font.font(family, textPixels * em);
    }
}
