package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CompletableFuture;
import javafx.application.Platform;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.settings.Settings;
import org.moultwright.ui.ToolkitThread;
import org.testfx.framework.junit5.ApplicationExtension;

/** A window is there before its desk, and none stays without one. */
@ExtendWith(ApplicationExtension.class)
class OpeningWindowUiTest {
    private final OpeningWindow opening = new OpeningWindow("desk", Settings.DEFAULT);

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

    private CompletableFuture<Boolean> shown() {
        CompletableFuture<Boolean> painted = new CompletableFuture<>();
        Platform.runLater(() -> opening.show(() -> painted.complete(true)));
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
