package org.moultwright.ui.theme;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Objects;
import javafx.scene.text.Font;

/** The typeface the workbench brings along, so that it looks the same on every machine. */
public final class Fonts {
    private static final List<String> FILES =
            List.of("OpenSans-Regular.ttf", "OpenSans-Italic.ttf", "OpenSans-Semibold.ttf", "OpenSans-Bold.ttf");

    private static boolean isLoaded;

    private Fonts() {}

    /** Makes the typeface known to the toolkit, once; on any thread, once the toolkit runs. */
    public static synchronized void load() {
        if (!isLoaded) {
            FILES.forEach(Fonts::load);
            isLoaded = true;
        }
    }

    private static void load(String file) {
        try (InputStream bytes =
                Objects.requireNonNull(Fonts.class.getResourceAsStream("/org/moultwright/fonts/" + file), file)) {
            Font.loadFont(bytes, 0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
