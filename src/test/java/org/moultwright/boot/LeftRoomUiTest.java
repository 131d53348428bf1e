package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicReference;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.boot.command.Commands;
import org.moultwright.domain.BroodRecord;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.store.StoreException;
import org.moultwright.store.StoreException.Reason;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.ui.alarm.AlarmReach;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.InventedPots;
import org.moultwright.workflow.ReadingSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A desk that stands before its store is open: what is entered waits for it, and it goes again if there is none. */
@ExtendWith(ApplicationExtension.class)
class LeftRoomUiTest {
    private static final LeftRooms ROOMS = new LeftRooms(Optional.of("this build"));
    private static final List<String> HEADLESS =
            List.of("-Dglass.platform=Monocle", "-Dmonocle.platform=Headless", "-Dprism.order=sw", "-Dprism.text=t2k");
    private static final String FIELD = ".stage-grid .text-field";

    @TempDir
    private Path folder;

    private Stage stage;
    private Path file;
    private Deed.Summary deedBefore;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @BeforeEach
    void leaveADemoRoom() {
        file = folder.resolve("demo.store");
        H2Store store = H2Store.open(file);
        DeskRoom.DEMO.fill(store, DeskRoom.evening());
        store.book().keep(LeftRoomsStoreTest.watered(DeskRoom.evening().minusSeconds(60)));
        deedBefore = store.book().latestDeeds(1).get(0);
        OpenedRoom.of(store, DeskRoom::evening, settings(), ROOMS).close();
    }

    @Test
    void whatIsEnteredBeforeIsOnDiskOnceTheStoreIsOpen(FxRobot robot) throws TimeoutException {
        Workbench workbench = deskNotOpened();
        enter(robot);
        assertThat(robot.lookup(FIELD).<TextField>queryAll()).isNotEmpty();
        assertThat(ROOMS.find(file)).as("nothing was written yet").isPresent();
        assertThat(folder.resolve("demo.store.sheets")).doesNotExist();

        ToolkitThread.run(workbench::readFirst);
        ShownDesk.await(
                () -> ToolkitThread.ask(() -> workbench.roomProperty().get().lastDeed())
                        .filter(deed -> !deed.equals(deedBefore))
                        .isPresent());
        close(workbench);
        assertOneDeedMore();
    }

    @Test
    void whatIsEnteredIsOnDiskEvenIfTheDeskIsClosedAtOnce(FxRobot robot) {
        Workbench workbench = deskNotOpened();
        enter(robot);
        close(workbench);
        assertThat(ROOMS.find(file)).as("left with what was entered").isPresent();
        assertOneDeedMore();
    }

    @Test
    void aSheetBegunBeforeIsKeptOnceTheStoreIsOpen(FxRobot robot) throws TimeoutException, IOException {
        Workbench workbench = deskNotOpened();
        robot.clickOn(FIELD).write("41");
        Path sheets = folder.resolve("demo.store.sheets");
        assertThat(sheets).doesNotExist();
        ToolkitThread.run(workbench::readFirst);
        ShownDesk.await(() -> Files.exists(sheets));
        assertThat(Files.readString(sheets)).contains("41");
        close(workbench);
    }

    /** They need no forecast, and those of a full room take a minute on a slow machine. */
    @Test
    void potsAndBenchAreThereBeforeTheStoreIsOpen(FxRobot robot) {
        H2Store store = H2Store.open(file);
        BroodRecord potted = InventedPots.lived("BB-26-A", "26E", 7);
        store.book().takeIn(potted, ReadingSource.of(potted));
        OpenedRoom.of(store, DeskRoom::evening, settings(), ROOMS).close();

        Workbench workbench = deskNotOpened();
        robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT7).release(KeyCode.CONTROL);
        assertThat(robot.lookup(".pot-table").<TableView<?>>query().getItems()).hasSize(7);
        robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT6).release(KeyCode.CONTROL);
        assertThat(robot.lookup("2 slings ready").tryQuery()).isPresent();
        close(workbench);
    }

    /** In a program of its own: the toolkit is begun once in each. */
    @Test
    void aStoreThatCannotBeOpenedIsToldOfAsEverAndItsDeskIsTakenAway() throws IOException {
        damageWithoutATrace();
        assertThat(ROOMS.find(file)).as("looks as it was left").isPresent();
        byte[] damaged = Files.readAllBytes(file);

        ChildProgram desk =
                new ChildProgram(folder, HEADLESS, line -> {}, RefusedProgram.class.getName(), file.toString());
        desk.await(
                "it ended",
                () -> !desk.out().isEmpty()
                        && desk.out().get(desk.out().size() - 1).startsWith(RefusedProgram.ENDED));

        assertThat(desk.out())
                .containsExactly(
                        RefusedProgram.SHOWN,
                        RefusedProgram.TOLD + "[" + Reason.DAMAGED.code() + "], 0 parts of a desk, window true",
                        RefusedProgram.ENDED + "1");
        assertThat(String.join("\n", desk.err())).contains("is damaged", Reason.DAMAGED.remedy());
        assertThat(file).hasBinaryContent(damaged);
        assertThat(folder.resolve("demo.store.sheets")).doesNotExist();
        assertThat(folder.resolve("demo.store.owner")).doesNotExist();
    }

    /** As a disk does that lets a file rot: neither its length nor its time tells. */
    private void damageWithoutATrace() throws IOException {
        FileTime left = Files.getLastModifiedTime(file);
        byte[] bytes = Files.readAllBytes(file);
        for (int i = 2 * 4096; i < bytes.length; i++) {
            bytes[i] = 0x55;
        }
        Files.write(file, bytes);
        Files.setLastModifiedTime(file, left);
    }

    private Workbench deskNotOpened() {
        LeftRooms.Found found = ROOMS.find(file).orElseThrow();
        SettingsFile settings = settings();
        return ToolkitThread.ask(() -> {
            Workbench made = new Workbench(
                    OpenedRoom.asLeft(found, DeskRoom::evening, settings, ROOMS),
                    settings,
                    Platform::runLater,
                    Optional.empty(),
                    AlarmReach.NOBODY);
            Scene scene = new Scene(made.view(), 1280, 800);
            made.appearance().dress(scene.getStylesheets());
            stage.setScene(scene);
            stage.show();
            return made;
        });
    }

    /** All of the first tray counted, and the sheet saved. */
    private static void enter(FxRobot robot) {
        robot.clickOn(FIELD).write("41").type(KeyCode.EQUALS).type(KeyCode.ENTER);
    }

    private void close(Workbench workbench) {
        ToolkitThread.run(() -> {
            stage.hide();
            workbench.close();
        });
    }

    private void assertOneDeedMore() {
        try (H2Store store = H2Store.open(file)) {
            assertThat(store.book().latestDeeds(3)).hasSize(2).last().isEqualTo(deedBefore);
        }
    }

    private SettingsFile settings() {
        return new SettingsFile(folder.resolve("settings.txt"));
    }

    /** The program on a store that only looks as it was left; says what becomes of its desk. */
    static final class RefusedProgram {
        static final String SHOWN = "shown";
        static final String TOLD = "told ";
        static final String ENDED = "ended ";

        private RefusedProgram() {}

        public static void main(String[] arguments) {
            AtomicReference<Stage> window = new AtomicReference<>();
            OpenWorkbench desk = new OpenWorkbench(
                    (fault, opening) -> {
                        System.out.println(
                                TOLD + "[" + ((StoreException) fault).reason().code() + "], "
                                        + DeskWindow.floor(window.get().getScene())
                                                .getChildren()
                                                .size() + " parts of a desk, window "
                                        + window.get().isShowing());
                        Platform.runLater(opening::close);
                    },
                    shown -> {
                        System.out.println(SHOWN);
                        window.set(shown.stage());
                    },
                    ROOMS);
            PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
            int code = Commands.run(desk, err, err, "--demo", "--store", arguments[0]);
            System.out.println(ENDED + code);
            System.exit(code);
        }
    }
}
