package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.boot.command.Commands;
import org.moultwright.store.H2Store;
import org.moultwright.store.StoreException;
import org.moultwright.store.StoreException.Reason;
import org.moultwright.store.file.ExactFilePath;
import org.moultwright.ui.ScreenShots;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** A store that cannot be opened is told to the keeper in a window, and to the command line as ever. */
@ExtendWith(ApplicationExtension.class)
class RefusedStoreUiTest {
    private static final int AT_FAULT = 1;

    @TempDir
    private Path folder;

    private final List<RuntimeException> told = new ArrayList<>();
    private final StringWriter err = new StringWriter();

    @Test
    void oneInUseElsewhere(FxRobot robot) {
        Path file = folder.resolve("room.store");
        try (H2Store other = H2Store.open(file)) {
            assertRefused(file, Reason.IN_USE, "is open in another Moultwright", robot);
            assertThat(other.book().broods()).isEmpty();
        }
    }

    @Test
    void aForeignFile(FxRobot robot) throws IOException {
        Path file = Files.writeString(folder.resolve("letter.store"), "Dear keeper, ".repeat(2000));
        assertRefused(file, Reason.NOT_A_STORE, "is not a store.", robot);
    }

    @Test
    void aDamagedStore(FxRobot robot) throws IOException {
        Path file = folder.resolve("room.store");
        H2Store.open(file).close();
        byte[] bytes = Files.readAllBytes(file);
        for (int i = 2 * 4096; i < bytes.length; i++) {
            bytes[i] = 0x55;
        }
        Files.write(file, bytes);
        assertRefused(file, Reason.DAMAGED, "is damaged", robot);
        assertThat(file).hasBinaryContent(bytes);
    }

    @Test
    void aNewerStore(FxRobot robot) throws SQLException {
        Path file = folder.resolve("room.store");
        H2Store.open(file).close();
        String database = ExactFilePath.databaseName(file);
        try (Connection connection = DriverManager.getConnection("jdbc:h2:" + database, "moultwright", "");
                Statement statement = connection.createStatement()) {
            statement.execute("update \"moultwright_history\" set \"version\" = '99'");
        }
        assertRefused(file, Reason.NEWER_SCHEMA, "was written by a later Moultwright", robot);
    }

    @Test
    void aFirstLookForAScriptOpensNoWindow() throws IOException {
        Files.writeString(folder.resolve("demo.store"), "Dear keeper, ".repeat(2000));
        assertThat(run("--first-look", folder.toString())).isEqualTo(AT_FAULT);
        assertThat(told).isEmpty();
    }

    @Test
    void aLongSentenceHasRoomInItsWindow(FxRobot robot) {
        Reason reason = Reason.IN_USE;
        String sentence = "'/home/keeper/a long way/down to where/the store lies/moultwright.store' is open in another"
                + " Moultwright (process 28980 on the machine in the back room, started 2026-05-03 20:41 UTC).";
        assertSaidInAWindow(RefusedOpening.of(new StoreException(reason, sentence)), sentence, reason, robot);
    }

    @Test
    void theWindowIsPictured() {
        RefusedOpening refusal = RefusedOpening.of(new StoreException(
                Reason.IN_USE,
                "'/home/keeper/moultwright.store' is open in another Moultwright (process 412 on back-room)."));
        ScreenShots.of("refusal", 640, 240, look -> new RefusalView(refusal, () -> {}));
        assertThat(Path.of("target", "screenshots", "refusal-dark.png")).isNotEmptyFile();
    }

    private void assertRefused(Path file, Reason reason, String sentence, FxRobot robot) {
        assertThat(run("--store", file.toString())).isEqualTo(AT_FAULT);
        assertThat(told)
                .singleElement()
                .isInstanceOfSatisfying(
                        StoreException.class,
                        fault -> assertThat(fault.reason()).isEqualTo(reason));
        assertThat(err.toString()).contains(sentence, reason.remedy(), reason.code());
        assertSaidInAWindow(RefusedOpening.of(told.get(0)), sentence, reason, robot);
    }

    private static void assertSaidInAWindow(RefusedOpening refusal, String sentence, Reason reason, FxRobot robot) {
        AtomicInteger closed = new AtomicInteger();
        List<Stage> window = new ArrayList<>();
        robot.interact(() -> {
            window.add(Desktop.refusal(refusal, closed::incrementAndGet));
            window.get(0).show();
        });
        Scene scene = window.get(0).getScene();
        Node close = robot.from(scene.getRoot()).lookup(".button").query();
        assertThat(scene.getHeight())
                .as("all of the window is seen")
                .isGreaterThan(close.localToScene(close.getBoundsInLocal()).getMaxY());
        List<String> said =
                robot.from(scene.getRoot()).lookup((Labeled label) -> label.isVisible()).<Labeled>queryAll().stream()
                        .map(Labeled::getText)
                        .toList();
        assertThat(said).anyMatch(text -> text.contains(sentence)).contains(reason.remedy(), reason.code(), "Close");
        robot.type(KeyCode.ESCAPE);
        assertThat(closed).hasValue(1);
    }

    private int run(String... arguments) {
        return Commands.run(
                new OpenWorkbench((fault, opening) -> {
                    told.add(fault);
                    Platform.runLater(opening::close);
                }),
                new PrintWriter(new StringWriter()),
                new PrintWriter(err, true),
                arguments);
    }
}
