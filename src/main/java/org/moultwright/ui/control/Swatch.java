package org.moultwright.ui.control;

import javafx.scene.layout.Region;
import org.moultwright.domain.Stage;
import org.moultwright.ui.theme.Token;

/** A small field of the colour that stands for a stage, the potted or the dead, or a dot of a tone. */
public final class Swatch extends Region {
    private Swatch(String... styleClasses) {
        getStyleClass().addAll(styleClasses);
    }

    public static Swatch of(Stage stage) {
        return new Swatch("swatch", "stage-" + stage.key());
    }

    /** A swatch as high as a row of the round, to stand at its left edge. */
    public static Swatch tall(Stage stage) {
        return new Swatch("swatch", "tall", "stage-" + stage.key());
    }

    public static Swatch potted() {
        return new Swatch("swatch", "stage-potted");
    }

    public static Swatch dead() {
        return new Swatch("swatch", "stage-dead");
    }

    public static Swatch dot(Tone tone) {
        return new Swatch("dot", tone.styleClass());
    }

    /** A dot of a colour of the palette, such as a stage's. */
    public static Swatch dot(Token token) {
        Swatch dot = new Swatch("dot");
        dot.setStyle("-fx-background-color: " + token.cssName() + ";");
        return dot;
    }
}
