package org.moultwright.ui.control;

import java.util.Locale;

/** How a message or a mark is meant. Colour never says it alone: words or an icon stand beside. */
public enum Tone {
    ACCENT,
    OK,
    WARN,
    BAD,
    MUTED;

    /** The class of style sheets for this tone. */
    public String styleClass() {
        return name().toLowerCase(Locale.ROOT);
    }
}
