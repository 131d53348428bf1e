package org.moultwright.ui.chart;

import javafx.scene.text.Font;
import org.moultwright.language.Texts;

/** The kinds of type in charts, in parts of the size of running text. */
enum Type {
    CAPTION(Texts.say("Open Sans"), 0.867),
    CAPTION_STRONG(Texts.say("Open Sans Semibold"), 0.867),
    BODY(Texts.say("Open Sans"), 1),
    STRONG(Texts.say("Open Sans Semibold"), 1);

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
