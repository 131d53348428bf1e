package org.moultwright.boot;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import javafx.animation.PauseTransition;
import javafx.embed.swing.SwingFXUtils;
import javafx.util.Duration;
import javax.imageio.ImageIO;
import org.moultwright.settings.Theme;
import org.moultwright.ui.shell.Screen;

/** Leaves a picture of every screen in both themes, then closes the window. */
final class FirstLook {
    /** Time for a screen to lay itself out and paint before its picture is taken. */
    private static final Duration SETTLE = Duration.millis(1000);

    private final Desktop.Shown shown;
    private final Path folder;
    private final Deque<Picture> left;

    private FirstLook(Desktop.Shown shown, Path folder) {
        this.shown = shown;
        this.folder = folder;
        this.left = new ArrayDeque<>(pictures(shown.workbench().screens()));
    }

    /** Begins once the room has been read. */
    static void take(Desktop.Shown shown, Path folder) {
        FirstLook look = new FirstLook(shown, folder);
        shown.workbench().roomProperty().addListener((observed, before, now) -> look.next());
    }

    private void next() {
        Picture picture = left.poll();
        if (picture == null) {
            shown.stage().close();
            return;
        }
        shown.workbench().appearance().themeProperty().set(picture.theme());
        shown.workbench().open(picture.screen());
        PauseTransition settle = new PauseTransition(SETTLE);
        settle.setOnFinished(event -> {
            save(picture);
            next();
        });
        settle.play();
    }

    private void save(Picture picture) {
        Path file = folder.resolve(
                "%s-%s.png".formatted(picture.screen(), picture.theme().name().toLowerCase(Locale.ROOT)));
        try {
            Files.createDirectories(folder);
            ImageIO.write(
                    SwingFXUtils.fromFXImage(shown.stage().getScene().snapshot(null), null), "png", file.toFile());
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static List<Picture> pictures(List<Screen> screens) {
        List<Picture> pictures = new ArrayList<>();
        for (Theme theme : Theme.values()) {
            screens.forEach(screen -> pictures.add(new Picture(screen.name().id(), theme)));
            pictures.add(new Picture("settings", theme));
        }
        return pictures;
    }

    private record Picture(String screen, Theme theme) {}
}
