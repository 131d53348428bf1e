package org.moultwright.ui.theme;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableObjectValue;
import javafx.collections.ObservableList;
import org.moultwright.settings.TextSize;
import org.moultwright.settings.Theme;

/** The theme and text size in force. Whatever it dresses changes with them at once. */
public final class Appearance {
    private static final String RULES = Objects.requireNonNull(
                    Appearance.class.getResource("/org/moultwright/ui/theme/moultwright.css"), "moultwright.css")
            .toExternalForm();

    private final ObjectProperty<Theme> theme = new SimpleObjectProperty<>(Theme.LIGHT);
    private final ObjectProperty<TextSize> textSize = new SimpleObjectProperty<>(TextSize.NORMAL);
    private final ObjectBinding<Palette> palette = Bindings.createObjectBinding(() -> new Palette(theme.get()), theme);

    /** In the usual theme and size. */
    public Appearance() {}

    /** As a keeper chose. */
    public Appearance(Theme theme, TextSize textSize) {
        this.theme.set(theme);
        this.textSize.set(textSize);
    }

    public ObjectProperty<Theme> themeProperty() {
        return theme;
    }

    public ObjectProperty<TextSize> textSizeProperty() {
        return textSize;
    }

    /** The colours in force, for whatever paints itself. */
    public ObservableObjectValue<Palette> paletteProperty() {
        return palette;
    }

    /** Dresses a scene or a dialogue, now and at every later change. */
    public void dress(ObservableList<String> styleSheets) {
        Fonts.load();
        Runnable put = () -> put(styleSheets);
        put.run();
        theme.addListener((observed, before, now) -> put.run());
        textSize.addListener((observed, before, now) -> put.run());
    }

    /** The same again would have everything styled anew. */
    private void put(ObservableList<String> styleSheets) {
        List<String> sheets = sheets();
        if (!styleSheets.equals(sheets)) {
            styleSheets.setAll(sheets);
        }
    }

    private List<String> sheets() {
        String css = palette.get().css(textSize.get().pixels());
        String encoded = Base64.getEncoder().encodeToString(css.getBytes(StandardCharsets.UTF_8));
        return List.of(RULES, "data:text/css;base64," + encoded);
    }
}
