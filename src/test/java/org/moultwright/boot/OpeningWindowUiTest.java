package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.settings.Settings;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.ui.theme.Appearance;
import org.testfx.framework.junit5.ApplicationExtension;

/** A window is there before its desk, and none stays without one. */
@ExtendWith(ApplicationExtension.class)
class OpeningWindowUiTest {
    private final OpeningWindow opening = new OpeningWindow("desk", Settings.DEFAULT, WindowFile.NONE);

    @AfterEach
    void closeAll() {
        ToolkitThread.ask(() -> {
            opening.close();
            return true;
        });
    }

    @Test
    void isPaintedBeforeAnythingElseIsDone() {
        CompletableFuture<Boolean> painted = shown();

        assertThat(ToolkitThread.await(painted)).isTrue();
        assertThat(ToolkitThread.ask(() -> window().getScene().getRoot().getChildrenUnmodifiable().stream()
                        .map(node -> ((Text) node).getText())
                        .toList()))
                .containsExactly("Opening…");
    }

    @Test
    void itsFloorIsDressedAsTheDeskWillBeAndStaysTheDesks() {
        ToolkitThread.await(shown());
        ToolkitThread.ask(() -> {
            Rehearsal.play(DeskWindow.floor(window().getScene()));
            return true;
        });
        List<String> dressed =
                ToolkitThread.ask(() -> List.copyOf(window().getScene().getStylesheets()));

        Scene scene = ToolkitThread.ask(() -> {
            Scene given = opening.handOver().getScene();
            new Appearance(Settings.DEFAULT.theme(), Settings.DEFAULT.textSize()).dress(given.getStylesheets());
            return given;
        });

        assertThat(dressed).isNotEmpty().isEqualTo(ToolkitThread.ask(() -> List.copyOf(scene.getStylesheets())));
        assertThat(ToolkitThread.ask(() -> words().getFont().getSize())).isEqualTo(wordsPixels());
    }

    @Test
    void cannotBeClosedBeforeItsDeskIsThere() {
        ToolkitThread.await(shown());

        assertThat(ToolkitThread.ask(this::isStillThereAfterClosing)).isTrue();
        assertThat(ToolkitThread.ask(() -> {
                    opening.handOver();
                    return isStillThereAfterClosing();
                }))
                .isFalse();
    }

    @Test
    void isNotShownOverADeskThatWasQuicker() {
        Stage given = ToolkitThread.ask(opening::handOver);
        CompletableFuture<Boolean> painted = shown();

        assertThat(ToolkitThread.ask(given::isShowing)).isFalse();
        assertThat(painted).isNotDone();
    }

    private static Text words() {
        return window().getScene().getRoot().getChildrenUnmodifiable().stream()
                .filter(Text.class::isInstance)
                .map(Text.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static double wordsPixels() {
        return Settings.DEFAULT.textSize().pixels() * 1.5;
    }

    private CompletableFuture<Boolean> shown() {
        CompletableFuture<Boolean> painted = new CompletableFuture<>();
        Platform.runLater(() -> opening.show(floor -> painted.complete(true)));
        return painted;
    }

    private static Stage window() {
        return Window.getWindows().stream()
                .filter(window -> window instanceof Stage stage && "desk".equals(stage.getTitle()))
                .map(Stage.class::cast)
                .findFirst()
                .orElseThrow();
    }

    /** Asks as a pressed corner of a window does. */
    private boolean isStillThereAfterClosing() {
        Stage stage = window();
        WindowEvent asked = new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST);
        stage.fireEvent(asked);
        return stage.getOnCloseRequest() != null;
    }
}
