package org.moultwright.ui;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Function;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;
import org.moultwright.settings.Theme;
import org.moultwright.ui.theme.Appearance;

/**
 * Pictures of a view in both themes, to be looked at.
 *
 * <p>From any test: {@code ScreenShots.of("round", look -> new RoundView(model))}, with the toolkit started
 * as in {@code *UiTest} ({@code @ExtendWith(ApplicationExtension.class)}). The pictures are
 * {@code target/screenshots/round-light.png} and {@code round-dark.png}; run one test with
 * {@code mvn -o -q test -Dtest=RoundUiTest}.
 */
public final class ScreenShots {
    private static final Path FOLDER = Path.of("target", "screenshots");

    private ScreenShots() {}

    /** Renders the view at 1280×800. The view is built anew for each theme, on the toolkit's thread. */
    public static void of(String name, Function<Appearance, ? extends Parent> view) {
        of(name, 1280, 800, view);
    }

    public static void of(String name, int widthPixels, int heightPixels, Function<Appearance, ? extends Parent> view) {
        for (Theme theme : Theme.values()) {
            WritableImage picture = ToolkitThread.ask(() -> render(theme, widthPixels, heightPixels, view));
            write(picture, FOLDER.resolve(name + "-" + theme.name().toLowerCase(Locale.ROOT) + ".png"));
        }
    }

    /** Pictures of a scene that is on screen, as it stands. */
    public static void ofShown(String name, Scene scene, Appearance appearance) {
        for (Theme theme : Theme.values()) {
            WritableImage picture = ToolkitThread.ask(() -> {
                appearance.themeProperty().set(theme);
                return scene.snapshot(null);
            });
            write(picture, FOLDER.resolve(name + "-" + theme.name().toLowerCase(Locale.ROOT) + ".png"));
        }
    }

    private static WritableImage render(
            Theme theme, int widthPixels, int heightPixels, Function<Appearance, ? extends Parent> view) {
        Appearance appearance = new Appearance();
        appearance.themeProperty().set(theme);
        Scene scene = new Scene(view.apply(appearance), widthPixels, heightPixels);
        appearance.dress(scene.getStylesheets());
        return scene.snapshot(null);
    }

    static void write(WritableImage picture, Path file) {
        try {
            Files.createDirectories(file.getParent());
            ImageIO.write(SwingFXUtils.fromFXImage(picture, null), "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
