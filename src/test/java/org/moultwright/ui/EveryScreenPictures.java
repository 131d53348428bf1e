package org.moultwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import javafx.animation.PauseTransition;
import javafx.scene.Group;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.util.Duration;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.moultwright.boot.DeskRoom;
import org.moultwright.boot.OpenDesk;
import org.moultwright.settings.Theme;
import org.testfx.framework.junit5.ApplicationExtension;

/**
 * Every screen in every room, both themes, on a small and a large display, to be looked at. Not part of a build:
 * {@code mvn test -Dtest=EveryScreenPictures} leaves them in {@code target/pictures}; with {@code -Dpictures.of=shelf} those of one
 * screen.
 */
@ExtendWith(ApplicationExtension.class)
class EveryScreenPictures {
    private static final String ONLY = System.getProperty("pictures.of", "");
    private static final Path FOLDER = Path.of("target", "pictures");

    /** Time for what is read and drawn aside to be there. */
    private static final Duration SETTLE = Duration.millis(500);

    @TempDir
    private Path stores;

    @ParameterizedTest
    @EnumSource
    void areTaken(DeskRoom room) {
        try (OpenDesk desk = room.open(stores)) {
            for (Size size : List.of(new Size(1280, 800), new Size(1920, 1080))) {
                for (Theme theme : Theme.values()) {
                    EveryViewTest.SCREENS.stream()
                            .filter(screen -> ONLY.isEmpty() || ONLY.equals(screen))
                            .forEach(screen -> take(desk, desk.show(screen), screen + "-" + room.key(), theme, size));
                    EveryViewTest.PAGES.stream()
                            .filter(page -> page.isIn(room))
                            .filter(page -> ONLY.isEmpty() || ONLY.equals(page.screen()))
                            .forEach(page -> take(
                                    desk,
                                    desk.show(page.screen(), page.button()),
                                    page.key() + "-" + room.key(),
                                    theme,
                                    size));
                }
            }
        }
        assertThat(FOLDER).isNotEmptyDirectory();
    }

    private void take(OpenDesk desk, Parent view, String picture, Theme theme, Size size) {
        CompletableFuture<Boolean> settled = new CompletableFuture<>();
        Scene shown = ToolkitThread.ask(() -> {
            desk.appearance().themeProperty().set(theme);
            if (view.getScene() != null) {
                view.getScene().setRoot(new Group());
            }
            Scene scene = new Scene(view, size.width(), size.height());
            desk.appearance().dress(scene.getStylesheets());
            scene.snapshot(null);
            PauseTransition settle = new PauseTransition(SETTLE);
            settle.setOnFinished(event -> settled.complete(true));
            settle.play();
            return scene;
        });
        ToolkitThread.await(settled);
        String name =
                "%s-%d-%s.png".formatted(picture, size.width(), theme.name().toLowerCase(Locale.ROOT));
        ScreenShots.write(ToolkitThread.ask(() -> shown.snapshot(null)), FOLDER.resolve(name));
    }

    private record Size(int width, int height) {}
}
