package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import javafx.stage.Stage;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.ui.ToolkitThread;
import org.testfx.framework.junit5.ApplicationExtension;

/** A keeper's own timings that are not understood are told of before any date stands on the desk, not after. */
@ExtendWith(ApplicationExtension.class)
class FaultyTimingsUiTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(names = {"EMPTY", "DEMO"})
    void areToldOfBeforeTheFirstDates(DeskRoom room) throws IOException {
        Path own = Files.writeString(folder.resolve(TimingsFile.NAME), "{ \"format\": \"moultwright-timings/9\" }");
        Workbench workbench = room.unread(folder);
        CompletableFuture<List<String>> atFirstDates = new CompletableFuture<>();
        Stage stage = ToolkitThread.ask(() -> {
            workbench
                    .roomProperty()
                    .addListener((observed, before, now) -> atFirstDates.complete(
                            ShownDesk.words(workbench.view()).toList()));
            return DeskWindow.show(workbench, DeskWindow.stage(room.key()), () -> {});
        });
        try {
            assertThat(ToolkitThread.await(atFirstDates))
                    .contains("Your own timings of species are not used.")
                    .anyMatch(words -> words.startsWith(own + ", line 1") && words.contains("Mend it there"));
        } finally {
            ToolkitThread.ask(() -> {
                stage.hide();
                return stage;
            });
        }
    }
}
