package org.moultwright.ui.theme;

import java.util.Locale;
import org.moultwright.domain.Stage;
import org.moultwright.settings.Theme;

/**
 * A colour by what it is for. Every colour on screen is one of these, written here and nowhere else:
 * style sheets receive them as looked-up colours, canvases through {@link Palette}.
 */
public enum Token {
    /** The page. */
    BG("#F5F3EE", "#121518"),
    /** Cards and fields. */
    SURFACE("#FFFFFF", "#1A1F24"),
    /** The rail, and anything lower than the page. */
    SUNK("#ECE8E0", "#0E1113"),
    /** Text. */
    INK("#20262B", "#E9E6DF"),
    /** Second text. */
    MUTED("#57626C", "#A3ADB6"),
    /** Hairlines. */
    LINE("#D9D3C7", "#323A42"),
    /** Focus, action, now. */
    ACCENT("#17646D", "#63BCC4"),
    ACCENT_SOFT("#DCEBEC", "#1D3438"),
    /** Text and marks upon {@link #ACCENT}. */
    ON_ACCENT("#FFFFFF", "#121518"),
    /** Late, disagreeing, absent. */
    WARN("#945700", "#E0A449"),
    WARN_SOFT("#FBEBCF", "#3A2C14"),
    /** Alarm and loss. */
    BAD("#A8261C", "#F0887D"),
    BAD_SOFT("#F8DEDA", "#42201D"),
    /** Fresh and done. */
    OK("#2C6B3F", "#7CC492"),

    EGG("#EBD9A0", "#F0E2B4"),
    POSTEMBRYO("#D89B33", "#E2AC50"),
    INSTAR1("#B4572F", "#CF764C"),
    DARKENED("#5B2333", "#96475A"),
    INSTAR2("#1F7A83", "#43A3AC"),
    POTTED("#8895A3", "#6B7785"),
    /** The strokes of the hatch that stands for the dead. */
    DEAD("#B9B3A8", "#4A4F55");

    private final String light;
    private final String dark;

    Token(String light, String dark) {
        this.light = light;
        this.dark = dark;
    }

    /** The colour animals of a stage have everywhere. */
    public static Token of(Stage stage) {
        return switch (stage) {
            case EGG -> EGG;
            case POSTEMBRYO -> POSTEMBRYO;
            case INSTAR1 -> INSTAR1;
            case DARKENED -> DARKENED;
            case INSTAR2 -> INSTAR2;
        };
    }

    /** The name of this colour in style sheets. */
    public String cssName() {
        return "-mw-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Written as in style sheets, such as #20262B. */
    String in(Theme theme) {
        return switch (theme) {
            case LIGHT -> light;
            case DARK -> dark;
        };
    }
}
