package org.moultwright.ui.broods;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.UnopenedSac;
import org.moultwright.ui.photo.PhotoDesk;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.MemoryBroodBook;
import org.moultwright.workflow.RoomView;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

@ExtendWith(ApplicationExtension.class)
class BroodsUiTest {
    private final ObjectProperty<RoomView> room = new SimpleObjectProperty<>(RoomFixture.room());
    private final MemoryBroodBook book = new MemoryBroodBook();
    private BroodsViewModel model;
    private BroodsView view;

    @Start
    void start(Stage stage) {
        Appearance appearance = new Appearance();
        model = new BroodsViewModel(desk());
        view = new BroodsView(model, appearance.paletteProperty());
        Scene scene = new Scene(view, 1188, 752);
        appearance.dress(scene.getStylesheets());
        stage.setScene(scene);
        stage.show();
        view.takeFocus();
    }

    @Test
    void arrowKeysChooseABroodAndReadItsDays(FxRobot robot) {
        robot.type(KeyCode.DOWN);
        assertThat(model.chosenProperty().get().orElseThrow().code()).isEqualTo("CC-26-B");
        robot.type(KeyCode.LEFT);
        assertThat(model.readingWordsProperty().get())
                .startsWith("CC-26-B, Saturday 2 May: as written on 28 April, 59 alive, 59 nymphs");
        robot.type(KeyCode.RIGHT, KeyCode.RIGHT);
        assertThat(model.readingWordsProperty().get()).contains("Monday 4 May: expected 59 alive");
    }

    @Test
    void aBroodSaysWhatItIsAndWhatComes() {
        BroodLine line = model.lines().get(0);
        assertThat(line.spoken())
                .isEqualTo("CC-26-A, 106 of 118 alive, 56 nymphs, 47 dark nymphs, slings 4 to 9 May, yield 103 to 106");
    }

    @Test
    void theStoryTellsFirstsLossesAndSilences() {
        assertThat(model.account().story())
                .extracting(BroodStory.StoryLine::words)
                .contains(
                        "First slings: 2 in A1, 1 in A2",
                        "First dark nymphs: 5 in A1",
                        "3 drowned, A2",
                        "Probe P-1 silent 20:56 to 07:31; warm-days filled from the set-point",
                        "Set-point of INC-1 raised from 27.0 to 28.3 °C");
    }

    @Test
    void theLedgerIsMadeWhenItIsAskedFor(FxRobot robot) {
        ToggleButton entries = robot.lookup("ledger entries").queryAs(ToggleButton.class);
        assertThat(robot.lookup(".table-view").queryAll()).isEmpty();
        robot.interact(entries::fire);
        TableView<?> table = robot.lookup(".table-view").query();
        assertThat(table.getItems()).isNotEmpty().hasSameSizeAs(model.account().entries());
        robot.interact(entries::fire);
        assertThat(robot.lookup(".table-view").queryAll()).isEmpty();
    }

    @Test
    void manyBroodsScrollOnOneScale(FxRobot robot) {
        robot.interact(() -> room.set(RoomFixture.crowded(60)));
        assertThat(model.lines()).hasSize(60);
        robot.type(KeyCode.END);
        assertThat(robot.lookup(".row-title").<Label>queryAllAs(Label.class))
                .hasSizeLessThan(20)
                .anyMatch(label -> label.getText().equals("CC-26-60"));
    }

    @Test
    void aSacNobodyOpenedIsReadByBelief(FxRobot robot) {
        robot.interact(() -> room.set(RoomFixture.room(List.of(UnopenedSac.view()))));
        assertThat(model.lines().get(0).spoken()).startsWith("GP-26-A, sac unopened, yield unknown, 21 days, ");
        assertThat(model.lines().get(0).next()).startsWith("pull ");
        robot.type(KeyCode.LEFT);
        assertThat(model.readingWordsProperty().get())
                .isEqualTo("GP-26-A, Saturday 2 May: in the sac, most are thought to be eggs");
    }

    @Test
    void everyStateIsPictured(FxRobot robot) {
        ScreenShots.of("broods", 1188, 752, look -> pictured(look));
        ScreenShots.of("broods-timing", 1188, 752, this::timing);
        ScreenShots.of("broods-timing-large", 1828, 1032, this::timing);
        ScreenShots.of("broods-large", 1828, 1032, look -> pictured(look));
        robot.interact(() -> room.set(UnopenedSac.room()));
        ScreenShots.of("broods-sac", 1188, 752, look -> pictured(look));
        robot.interact(() -> room.set(RoomFixture.crowded(60)));
        ScreenShots.of("broods-many", 1188, 752, look -> pictured(look));
        robot.interact(() -> room.set(RoomView.EMPTY));
        ScreenShots.of("broods-empty", 1188, 752, look -> pictured(look));
    }

    private BroodsView timing(Appearance look) {
        BroodsViewModel shown = new BroodsViewModel(desk());
        BroodsView timing = new BroodsView(shown, look.paletteProperty());
        shown.openTiming();
        return timing;
    }

    private BroodsView pictured(Appearance look) {
        return new BroodsView(new BroodsViewModel(desk()), look.paletteProperty());
    }

    private BroodsDesk desk() {
        return new BroodsDesk(
                room,
                () -> {},
                InventedWays.in(book, Optional.of(() -> {})),
                InventedBeliefs.in(book),
                InventedWays.NO_PAPER,
                new InlineRunner(),
                InstantSource.fixed(RoomFixture.NOW),
                new DayWords(RoomFixture.ZONE),
                new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY),
                PhotoDesk.none(new InlineRunner(), new DayWords(RoomFixture.ZONE)));
    }
}
