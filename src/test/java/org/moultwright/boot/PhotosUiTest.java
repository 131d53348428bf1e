package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.PhotoNote;
import org.moultwright.settings.DeskSettings;
import org.moultwright.settings.Settings;
import org.moultwright.settings.SettingsFile;
import org.moultwright.store.SamplePictures;
import org.moultwright.ui.SystemDrag;
import org.moultwright.ui.ToolkitThread;
import org.moultwright.ui.print.Pixels;
import org.moultwright.workflow.PagePicture;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** Photos of a tray on the whole desk: pasted, dropped, out of a watched folder, looked at large, and taken back. */
@ExtendWith(ApplicationExtension.class)
class PhotosUiTest {
    /** The first tray of the demo room that is not done, and under the hand. */
    private static final String TRAY = "B1";

    private static final String BROOD = "CC-26-B";

    @TempDir
    private Path folder;

    private Path camera;
    private Stage stage;
    private ShownDesk desk;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @BeforeEach
    void openTheDemo(FxRobot robot) throws IOException {
        camera = Files.createDirectory(folder.resolve("camera"));
        new SettingsFile(folder.resolve("demo-settings.txt"))
                .save(Settings.DEFAULT.withDesk(DeskSettings.DEFAULT.withPhotoFolder(camera.toString())));
        desk = ShownDesk.open(DeskRoom.DEMO, folder, stage, "round");
        robot.clickOn(".stage-grid .text-field");
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void filesArePastedLookedAtAndTakenBack(FxRobot robot) throws TimeoutException, IOException {
        Path picture = Files.write(folder.resolve("IMG_1.jpg"), SamplePictures.of("jpg", 640, 480, 0x336699));
        Path letter = Files.writeString(folder.resolve("letter.txt"), "no picture");
        copy(robot, content -> content.putFiles(List.of(picture.toFile(), letter.toFile())));
        ctrl(robot, KeyCode.V);
        ShownDesk.await(() -> photos().size() == 1);
        assertThat(photos().get(0).name()).isEqualTo("IMG_1.jpg");
        desk.awaitWords("'letter.txt' is no picture that can be read here. Save it as JPEG or PNG and attach that."
                + " 1 other photo was attached.");
        ShownDesk.await(() -> robot.lookup(".photo-thumb").tryQuery().isPresent());

        robot.type(KeyCode.P);
        ShownDesk.await(() -> robot.lookup(".photo-large").tryQuery().isPresent());
        assertThat(robot.lookup((Label label) -> label.getText().endsWith("IMG_1.jpg"))
                        .tryQuery())
                .isPresent();
        assertThat(robot.listWindows()).as("in the desk's own window").hasSize(1);
        robot.type(KeyCode.ESCAPE);
        ShownDesk.await(() -> robot.lookup(".photo-large").tryQuery().isEmpty());

        ctrl(robot, KeyCode.Z);
        ShownDesk.await(() -> photos().isEmpty());
        ShownDesk.await(() ->
                robot.lookup(".photo-thumb").tryQuery().filter(Node::isVisible).isEmpty());
    }

    /** As a program of the system lets files go over the window. */
    @Test
    void filesAreDroppedOnTheSheetAndWhatIsNoPictureIsSaid(FxRobot robot) throws TimeoutException, IOException {
        Path picture = Files.write(folder.resolve("IMG_2.jpg"), SamplePictures.of("jpg", 64, 48, 0x669933));
        Path cut =
                Files.write(folder.resolve("cut.png"), Arrays.copyOf(SamplePictures.of("png", 640, 480, 0x336699), 90));
        Path telephone = Files.writeString(folder.resolve("IMG_3.HEIC"), "\0\0\0\30ftypheic\0\0\0\0mif1heic");
        ClipboardContent files = new ClipboardContent();
        files.putFiles(List.of(picture.toFile(), cut.toFile(), telephone.toFile()));
        Node sheet = robot.lookup(".stage-grid").query();
        SystemDrag drag = ToolkitThread.ask(() -> SystemDrag.of(files, stage.getScene()));
        assertThat(ToolkitThread.ask(() -> drag.carryOver(sheet))).isTrue();
        ToolkitThread.ask(() -> {
            drag.letGoOver(sheet);
            return true;
        });
        ShownDesk.await(() -> photos().size() == 1);
        assertThat(photos().get(0).name()).isEqualTo("IMG_2.jpg");
        desk.awaitWords("'cut.png' is no picture that can be read here."
                + " 'IMG_3.HEIC' is a HEIC or AVIF picture, as telephones make them; those cannot be read here."
                + " Save it as JPEG or PNG and attach that. 1 other photo was attached.");
        ctrl(robot, KeyCode.Z);
        ShownDesk.await(() -> photos().isEmpty());

        ClipboardContent words = new ClipboardContent();
        words.putString("no picture");
        assertThat(ToolkitThread.ask(
                        () -> SystemDrag.of(words, stage.getScene()).carryOver(sheet)))
                .as("words are not taken")
                .isFalse();
    }

    @Test
    void whatIsSaidOfAPictureThatIsNoneIsPutAwayByKeyOrButton(FxRobot robot) throws TimeoutException, IOException {
        Path letter = Files.writeString(folder.resolve("letter.txt"), "no picture");
        String said = "'letter.txt' is no picture that can be read here. Save it as JPEG or PNG and attach that."
                + " No photo was attached.";
        copy(robot, content -> content.putFiles(List.of(letter.toFile())));
        ctrl(robot, KeyCode.V);
        desk.awaitWords(said);
        robot.type(KeyCode.ESCAPE);
        ShownDesk.await(() -> !desk.words().contains(said));

        ctrl(robot, KeyCode.V);
        desk.awaitWords(said);
        robot.clickOn("Close");
        ShownDesk.await(() -> !desk.words().contains(said));
    }

    @Test
    void aPictureWithoutAFileIsPasted(FxRobot robot) throws TimeoutException {
        copy(
                robot,
                content -> content.putImage(Pixels.image(new PagePicture(2, 1, new int[] {0xFF112233, 0xFF445566}))));
        ctrl(robot, KeyCode.V);
        ShownDesk.await(() -> photos().size() == 1);
        assertThat(photos().get(0).file()).endsWith(".png");
    }

    @Test
    void newPicturesInTheFolderAreOfferedAttachedTakenBackAndOfferedAgain(FxRobot robot)
            throws TimeoutException, IOException {
        Files.write(camera.resolve("DSC_1.jpg"), SamplePictures.of("jpg", 64, 48, 0x996633));
        String question = "A new picture: of %s?".formatted(TRAY);
        ShownDesk.await(() -> desk.words().contains(question));
        robot.type(KeyCode.A);
        ShownDesk.await(() -> photos().size() == 1);
        ShownDesk.await(() -> !desk.words().contains(question));
        ctrl(robot, KeyCode.Z);
        ShownDesk.await(() -> photos().isEmpty());
        ShownDesk.await(() -> desk.words().contains(question));
        Button no =
                robot.lookup((Button button) -> button.getText().equals("No")).queryButton();
        robot.interact(no::fire);
        ShownDesk.await(() -> !desk.words().contains(question));
        assertThat(photos()).isEmpty();
    }

    @Test
    void aPictureInUseIsSeenWhereTheBroodIsLookedAtClosely(FxRobot robot) throws TimeoutException, IOException {
        Path picture = Files.write(folder.resolve("IMG_1.png"), SamplePictures.of("png", 64, 48, 0x336699));
        copy(robot, content -> content.putFiles(List.of(picture.toFile())));
        ctrl(robot, KeyCode.V);
        ShownDesk.await(() -> photos().size() == 1);
        desk.desk().show("broods");
        desk.awaitWords(BROOD);
        robot.clickOn(BROOD).type(KeyCode.ENTER);
        ShownDesk.await(() -> robot.lookup(".photo-row .photo-thumb").tryQuery().isPresent());
    }

    private List<PhotoNote> photos() {
        return desk.desk().room().brood(BROOD).orElseThrow().record().photos();
    }

    private static void copy(FxRobot robot, Consumer<ClipboardContent> fill) {
        ClipboardContent content = new ClipboardContent();
        fill.accept(content);
        robot.interact(() -> Clipboard.getSystemClipboard().setContent(content));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static void ctrl(FxRobot robot, KeyCode key) {
        robot.press(KeyCode.CONTROL).type(key).release(KeyCode.CONTROL);
    }
}
