package org.moultwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import javafx.animation.PauseTransition;
import javafx.scene.Group;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
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
 * {@code mvn test -Dtest=EveryScreenPictures} leaves them in {@code target/pictures}.
 */
@ExtendWith(ApplicationExtension.class)
class EveryScreenPictures {
    private static final Path FOLDER = Path.of("target", "pictures");

    /** Time for what is read and drawn aside to be there. */
    private static final Duration SETTLE = Duration.millis(500);

    /** What is pressed on a screen for another picture, and what then leads back. */
    private static final Map<String, List<String>> PRESSED = Map.of("forecast", List.of("What to order", "Take along"));

    private static final Map<String, String> BACK = Map.of("What to order", "Plan ahead");

    @TempDir
    private Path stores;

    @ParameterizedTest
    @EnumSource
    void areTaken(DeskRoom room) {
        try (OpenDesk desk = room.open(stores)) {
            for (Size size : List.of(new Size(1280, 800), new Size(1920, 1080))) {
                for (Theme theme : Theme.values()) {
                    EveryViewTest.SCREENS.forEach(screen -> take(desk, room, screen, theme, size));
                }
            }
        }
        assertThat(FOLDER).isNotEmptyDirectory();
    }

    /** The screen, and what opens from it by one button. */
    private void take(OpenDesk desk, DeskRoom room, String screen, Theme theme, Size size) {
        Parent view = pictured(desk, room, screen, screen, theme, size);
        PRESSED.getOrDefault(screen, List.of()).forEach(word -> {
            if (press(view, word)) {
                String name = screen + "-" + word.toLowerCase(Locale.ROOT).replace(' ', '-');
                pictured(desk, room, screen, name, theme, size);
                press(view, BACK.getOrDefault(word, "Back"));
            }
        });
    }

    /** Presses the button of a word, if it is there to be pressed. */
    private static boolean press(Parent view, String word) {
        return ToolkitThread.ask(() -> {
            List<ButtonBase> found = view.lookupAll("*").stream()
                    .filter(node -> node instanceof ButtonBase button && word.equals(button.getText()))
                    .map(ButtonBase.class::cast)
                    .toList();
            found.forEach(ButtonBase::fire);
            return !found.isEmpty();
        });
    }

    private static Parent pictured(OpenDesk desk, DeskRoom room, String screen, String name, Theme theme, Size size) {
        Parent view = desk.show(screen);
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
        String file = "%s-%s-%d-%s.png"
                .formatted(name, room.key(), size.width(), theme.name().toLowerCase(Locale.ROOT));
        ScreenShots.write(ToolkitThread.ask(() -> shown.snapshot(null)), FOLDER.resolve(file));
        return view;
    }

    private record Size(int width, int height) {}
}
