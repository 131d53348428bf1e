package org.moultwright.ui.theme;

import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Paint;
import javafx.scene.paint.Stop;
import org.moultwright.domain.Stage;
import org.moultwright.settings.Theme;

/** All colours of one theme, for canvases and for anything else that paints itself. */
public record Palette(Theme theme) {
    /** The hatch repeats along a diagonal of this many pixels each way; a fifth of it is stroke. */
    private static final int HATCH_PERIOD_PIXELS = 4;

    private static final double HATCH_STROKE = 0.25;

    public Color colour(Token token) {
        return Color.web(token.in(theme));
    }

    public Color stage(Stage stage) {
        return colour(Token.of(stage));
    }

    /** Slanting strokes on nothing: the dead, gaps, and whatever else is known only as absent. */
    public Paint hatch(Token stroke) {
        Color line = colour(stroke);
        return new LinearGradient(
                0,
                0,
                HATCH_PERIOD_PIXELS,
                HATCH_PERIOD_PIXELS,
                false,
                CycleMethod.REPEAT,
                new Stop(0, line),
                new Stop(HATCH_STROKE, line),
                new Stop(HATCH_STROKE, Color.TRANSPARENT),
                new Stop(1, Color.TRANSPARENT));
    }

    /** The rule that gives these colours to style sheets, at a base size of text. */
    String css(double textPixels) {
        StringBuilder rule = new StringBuilder(".root {\n");
        for (Token token : Token.values()) {
            declare(rule, token.cssName(), token.in(theme));
        }
        declare(rule, "-mw-hatch", cssHatch());
        declare(rule, "-fx-font-size", textPixels + "px");
        return rule.append("}\n").toString();
    }

    /** Put together by hand: Java's formatter would be read in at every start for this alone. */
    private static String cssHatch() {
        String period = HATCH_PERIOD_PIXELS + "px";
        String edge = 100 * HATCH_STROKE + "%";
        String stroke = Token.DEAD.cssName();
        return "linear-gradient(from 0px 0px to " + period + " " + period + ", repeat, " + stroke + " 0%, " + stroke
                + " " + edge + ", transparent " + edge + ", transparent 100%)";
    }

    private static void declare(StringBuilder rule, String name, String value) {
        rule.append("  ").append(name).append(": ").append(value).append(";\n");
    }
}
