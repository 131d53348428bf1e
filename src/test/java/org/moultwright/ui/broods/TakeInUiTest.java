package org.moultwright.ui.broods;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.task.InlineRunner;
import org.moultwright.task.Job;
import org.moultwright.task.Outcome;
import org.moultwright.task.Runner;
import org.moultwright.task.Work;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.photo.PhotoDesk;
import org.moultwright.ui.shell.KeyHint;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.MemoryBroodBook;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TakeInFolders;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Taking in a brood folder, and going to the demo room, by keyboard. */
@ExtendWith(ApplicationExtension.class)
class TakeInUiTest {
    @TempDir
    private Path temporary;

    private final ObjectProperty<RoomView> room = new SimpleObjectProperty<>(RoomView.EMPTY);
    private final MemoryBroodBook book = new MemoryBroodBook();
    private final AtomicInteger demoRooms = new AtomicInteger();
    private final AtomicInteger readings = new AtomicInteger();
    private Optional<Path> chosen = Optional.empty();
    private Runner runner = new InlineRunner();
    private Screen screen;

    @Start
    void start(Stage stage) {
        Appearance appearance = new Appearance();
        screen = screen(appearance);
        Scene scene = new Scene((Parent) screen.node(), 1188, 752);
        appearance.dress(scene.getStylesheets());
        stage.setScene(scene);
        stage.show();
        screen.shown();
    }

    @Test
    void theEmptyDeskOffersAllWaysInToTheKeyboard(FxRobot robot) {
        assertThat(
                        says(
                                robot,
                                "No broods yet. Write down a new sac, take in a brood folder, or look around in the demo room."))
                .isTrue();
        assertThat(screen.keys()).extracting(KeyHint::key).contains("Ctrl + N", "Ctrl + O", "Ctrl + D");
        robot.type(KeyCode.TAB).type(KeyCode.TAB).type(KeyCode.SPACE);
        assertThat(demoRooms).hasValue(1);
        ctrl(robot, KeyCode.D);
        assertThat(demoRooms).hasValue(2);
    }

    @Test
    void aSoundFolderIsTakenIn(FxRobot robot) {
        chosen = Optional.of(Path.of("demo-data", "cc-26-a"));
        ctrl(robot, KeyCode.O);
        assertThat(book.find("CC-26-A")).isPresent();
        assertThat(readings).hasValue(1);
        ctrl(robot, KeyCode.O);
        assertThat(robot.lookup((Labeled label) -> label.getText().startsWith("Everything of CC-26-A was here already"))
                        .tryQuery())
                .isPresent();
    }

    @Test
    void everyPlaceThatIsWrongIsListedAndMendedOnesAreTriedAgain(FxRobot robot) throws IOException {
        chosen = Optional.of(brokenFolder());
        ctrl(robot, KeyCode.O);
        assertThat(book.broods()).isEmpty();
        assertThat(says(robot, "3 places in xx-1 cannot be read.")).isTrue();
        assertThat(texts(robot))
                .contains(TakeInWords.REMEDY, "checks.csv, line 2", "checks.csv, line 3", "moves.csv, line 2")
                .anyMatch(text -> text.startsWith("count: “x3” stands there, expected "));
        Files.delete(chosen.get().resolve("checks.csv"));
        Files.delete(chosen.get().resolve("moves.csv"));
        robot.type(KeyCode.ENTER);
        assertThat(book.find("XX-1")).isPresent();
    }

    @Test
    void aStoppedOneLeavesNothing(FxRobot robot) {
        List<Runnable> cancelled = new ArrayList<>();
        runner = new Runner() {
            @Override
            public <T> Job run(Work<T> work, Watcher watcher, java.util.function.Consumer<Outcome<T>> whenEnded) {
                watcher.progressed(0, "20 000 readings so far");
                cancelled.add(() -> whenEnded.accept(new Outcome.Cancelled<>()));
                return cancelled.get(0)::run;
            }
        };
        robot.interact(() -> robot.window(0).getScene().setRoot((Parent)
                screen(new Appearance()).node()));
        chosen = Optional.of(Path.of("demo-data", "cc-26-a"));
        robot.interact(() -> screen.shown());
        ctrl(robot, KeyCode.O);
        assertThat(says(robot, "20 000 readings so far")).isTrue();
        robot.clickOn("Stop");
        assertThat(says(robot, "Stopped. Nothing of cc-26-a was taken in.")).isTrue();
        assertThat(book.broods()).isEmpty();
    }

    @Test
    void itsStatesArePictured() throws IOException {
        Path broken = brokenFolder();
        ScreenShots.of("take-in-refused", 1188, 752, look -> {
            TakeInViewModel model = new TakeInViewModel(ways(), () -> {});
            model.takeIn(broken);
            return new TakeInView(model);
        });
        assertThat(Path.of("target", "screenshots", "take-in-refused-dark.png")).isNotEmptyFile();
    }

    private Path brokenFolder() throws IOException {
        Path folder = Files.createDirectories(temporary.resolve("xx-1"));
        Files.writeString(folder.resolve("brood.json"), """
                { "format": "moultwright-brood/1", "code": "XX-1", "taxon": "Invented species",
                  "zone": "Europe/Lisbon", "stages": ["egg", "postembryo"] }
                """);
        Files.writeString(folder.resolve("checks.csv"), """
                time,tray,stage,how,count,of
                2026-03-25T18:00:00Z,A1,egg,full,x3,
                2026-03-25 18:00,A1,egg,full,3,
                """);
        Files.writeString(folder.resolve("moves.csv"), """
                time,from,to,stage,count,cause
                2026-03-25T18:00:00Z,sac,A1,egg,-4,opened
                """);
        return folder;
    }

    private WaysIn ways() {
        return InventedWays.in(
                book,
                () -> chosen,
                (folder, progress) -> new TakeInFolders(new PlainBroodFolders(), book).takeIn(folder),
                runner,
                Optional.of(demoRooms::incrementAndGet));
    }

    private Screen screen(Appearance look) {
        return BroodsScreen.of(
                new BroodsDesk(
                        room,
                        readings::incrementAndGet,
                        ways(),
                        InventedBeliefs.in(book),
                        InventedWays.NO_PAPER,
                        new InlineRunner(),
                        InstantSource.fixed(RoomFixture.NOW),
                        new DayWords(RoomFixture.ZONE),
                        new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY),
                        PhotoDesk.none(new InlineRunner(), new DayWords(RoomFixture.ZONE))),
                look.paletteProperty());
    }

    private static void ctrl(FxRobot robot, KeyCode key) {
        robot.press(KeyCode.CONTROL).type(key).release(KeyCode.CONTROL);
    }

    private static boolean says(FxRobot robot, String sentence) {
        return texts(robot).contains(sentence);
    }

    private static List<String> texts(FxRobot robot) {
        return robot.lookup((Labeled label) -> label.isVisible()).queryAllAs(Labeled.class).stream()
                .map(Labeled::getText)
                .toList();
    }
}
