package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javafx.application.Platform;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.task.BackgroundRunner;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.ui.alarm.AlarmReach;
import org.testfx.framework.junit5.ApplicationExtension;

/** The demo room opens once, beside the keeper's desk, and both let go of their stores when the desk is closed. */
@ExtendWith(ApplicationExtension.class)
class DemoDoorUiTest {
    @TempDir
    private Path folder;

    @Test
    void leadsThereOnceAndClosesWithTheDesk() {
        Path own = folder.resolve("own.store");
        Path demo = folder.resolve("demo.store");
        SettingsFile settings = new SettingsFile(folder.resolve("settings.txt"));
        DemoDoor door = new DemoDoor(demo, DemoRoom.USUAL_EVENING, settings, Platform::runLater);
        CompletableFuture<Boolean> closed = new CompletableFuture<>();
        Stage desk = ToolkitThread.ask(() -> DeskWindow.show(
                new Workbench(
                        OpenedRoom.of(H2Store.open(own), InstantSource.system(), settings, DeskRoom.NOT_KEPT),
                        settings,
                        Platform::runLater,
                        Optional.of(door),
                        AlarmReach.NOBODY),
                DeskWindow.stage("desk"),
                () -> closed.complete(true)));
        try (BackgroundRunner runner = new BackgroundRunner("demo", Platform::runLater)) {
            enter(door, runner);
            enter(door, runner);
        }
        assertThat(Window.getWindows().stream()
                        .filter(window -> window instanceof Stage stage && DemoDoor.TITLE.equals(stage.getTitle())))
                .hasSize(1);
        Platform.runLater(desk::close);
        assertThat(ToolkitThread.await(closed)).isTrue();
        try (H2Store reopened = H2Store.open(demo);
                H2Store untouched = H2Store.open(own)) {
            assertThat(reopened.book().broods()).hasSize(3);
            assertThat(untouched.book().broods()).isEmpty();
        }
    }

    private static void enter(DemoDoor door, BackgroundRunner runner) {
        CompletableFuture<Boolean> there = new CompletableFuture<>();
        Platform.runLater(() -> door.open(runner, () -> there.complete(true), there::completeExceptionally));
        ToolkitThread.await(there);
    }
}
