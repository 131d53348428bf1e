package org.moultwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import javafx.animation.PauseTransition;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.util.Duration;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.moultwright.boot.DeskRoom;
import org.moultwright.boot.OpenDesk;
import org.moultwright.settings.TextSize;
import org.moultwright.settings.Theme;
import org.testfx.framework.junit5.ApplicationExtension;

/**
 * Every screen in every room, both themes, on a small and a large display, to be looked at. Not part of a build:
 * {@code mvn test -Dtest=EveryScreenPictures} leaves them in {@code target/pictures}, and those of the small display
 * side by side in {@code docs/pictures/screens}; with {@code -Dpictures.of=shelf} those of one screen, with
 * {@code -Dpictures.text=LARGEST} in text of that size and not side by side.
 */
@ExtendWith(ApplicationExtension.class)
class EveryScreenPictures {
    private static final String ONLY = System.getProperty("pictures.of", "");
    private static final TextSize TEXT = TextSize.valueOf(System.getProperty("pictures.text", "NORMAL"));
    private static final Path FOLDER = Path.of("target", "pictures");
    private static final Path SIDE_BY_SIDE = Path.of("docs", "pictures", "screens");
    private static final Size SMALL = new Size(1280, 800);
    private static final Size LARGE = new Size(1920, 1080);

    /** Time for what is read and drawn aside to be there. */
    private static final Duration SETTLE = Duration.millis(500);

    @TempDir
    private Path stores;

    @ParameterizedTest
    @EnumSource
    void areTaken(DeskRoom room) {
        try (OpenDesk desk = room.open(stores)) {
            for (Size size : List.of(SMALL, LARGE)) {
                for (Theme theme : Theme.values()) {
                    EveryViewTest.SCREENS.stream()
                            .filter(EveryScreenPictures::isWanted)
                            .forEach(screen -> take(desk, desk.show(screen), screen + "-" + room.key(), theme, size));
                    EveryViewTest.PAGES.stream()
                            .filter(page -> page.isIn(room))
                            .filter(page -> isWanted(page.screen()))
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

    @AfterAll
    static void areLaidSideBySide() {
        if (TEXT != TextSize.NORMAL) {
            return;
        }
        Stream<String> screens = EveryViewTest.SCREENS.stream().filter(EveryScreenPictures::isWanted);
        Stream<String> pages = EveryViewTest.PAGES.stream()
                .filter(page -> isWanted(page.screen()))
                .map(EveryViewTest.Page::key);
        Stream.concat(screens, pages)
                .forEach(view -> ContactSheet.write(
                        Arrays.stream(DeskRoom.values())
                                .map(room -> Arrays.stream(Theme.values())
                                        .map(theme -> file(view + "-" + room.key(), theme, SMALL))
                                        .toList())
                                .toList(),
                        SIDE_BY_SIDE.resolve(view + ".png")));
    }

    private static boolean isWanted(String screen) {
        return ONLY.isEmpty() || ONLY.equals(screen);
    }

    private void take(OpenDesk desk, Parent view, String picture, Theme theme, Size size) {
        CompletableFuture<Boolean> settled = new CompletableFuture<>();
        Scene shown = ToolkitThread.ask(() -> {
            desk.appearance().themeProperty().set(theme);
            desk.appearance().textSizeProperty().unbind();
            desk.appearance().textSizeProperty().set(TEXT);
            Scene scene = new EveryViewTest.Worn(view, desk.appearance()).scene(size.width(), size.height());
            scene.snapshot(null);
            PauseTransition settle = new PauseTransition(SETTLE);
            settle.setOnFinished(event -> settled.complete(true));
            settle.play();
            return scene;
        });
        ToolkitThread.await(settled);
        ScreenShots.write(ToolkitThread.ask(() -> shown.snapshot(null)), file(picture, theme, size));
    }

    private static Path file(String picture, Theme theme, Size size) {
        String shade = theme.name().toLowerCase(Locale.ROOT);
        return FOLDER.resolve("%s-%d-%s.png".formatted(picture, size.width(), shade));
    }

    private record Size(int width, int height) {}
}
