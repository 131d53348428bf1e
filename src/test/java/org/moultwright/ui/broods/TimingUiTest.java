package org.moultwright.ui.broods;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.compute.forecast.Forecaster;
import org.moultwright.compute.forecast.PriorSource;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Timing;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.exchange.TimingsFile;
import org.moultwright.store.H2Store;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.photo.PhotoDesk;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.Room;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TakeInFolders;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A brood's timing over a real store and real forecasts: an older brood of the demo room teaches a younger one. */
@ExtendWith(ApplicationExtension.class)
class TimingUiTest {
    private static final String TEACHER = "CC-26-A";
    private static final String LEARNER = "CC-26-C";
    private static final Instant END = Instant.parse("2026-06-20T20:00:00Z");

    @TempDir
    static Path folder;

    private final ObjectProperty<RoomView> room = new SimpleObjectProperty<>(RoomView.EMPTY);
    private final List<Runnable> undos = new ArrayList<>();
    private H2Store store;
    private BroodsViewModel model;

    @Start
    void start(javafx.stage.Stage stage) {
        store = H2Store.open(folder.resolve(UUID.randomUUID() + ".store"));
        TakeInFolders takeIn = new TakeInFolders(new PlainBroodFolders(), store.book());
        takeIn.takeIn(Path.of("demo-data/cc-26-a"));
        takeIn.takeIn(Path.of("demo-data/cc-26-c"));
        Room read = new Room(store.book(), store.readings(), new Forecaster(TimingsFile.shipped())::forecast);
        Runnable readAgain = () -> room.set(read.at(END));
        readAgain.run();
        Appearance appearance = new Appearance();
        model = new BroodsViewModel(desk(readAgain));
        BroodsView view = new BroodsView(model, appearance.paletteProperty());
        Scene scene = new Scene(view, 1188, 752);
        appearance.dress(scene.getStylesheets());
        stage.setScene(scene);
        stage.show();
        view.takeFocus();
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void aBroodIsLeftOutAndLearnedFromAgainByTheKeyboard(FxRobot robot) {
        assertThat(forecastFrom()).isEqualTo(PriorSource.LEARNED);
        robot.type(KeyCode.DOWN).press(KeyCode.CONTROL).type(KeyCode.T).release(KeyCode.CONTROL);
        TimingViewModel timing = model.timingProperty().get().orElseThrow();
        assertThat(timing.code()).isEqualTo(LEARNER);
        assertThat(timing.taughtProperty().get()).contains("learned from 1 of 1 completed brood");
        walkTo(robot, "why " + TEACHER + " is left out, if you like");
        robot.write("wrong laying day").type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(forecastFrom()).isEqualTo(PriorSource.FOLDER);
        assertThat(store.book().leftOut().get(TEACHER).reason()).isEqualTo("wrong laying day");
        assertThat(timing.taughtProperty().get()).contains("learned from 0 of 1 completed brood");
        assertThat(timing.teachers().get(0).leftOut()).contains("wrong laying day");
        walkTo(robot, "Learn from " + TEACHER + " again");
        robot.type(KeyCode.SPACE);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(forecastFrom()).isEqualTo(PriorSource.LEARNED);
        robot.interact(undos.get(1));
        assertThat(forecastFrom()).isEqualTo(PriorSource.FOLDER);
        robot.type(KeyCode.ESCAPE);
        assertThat(model.timingProperty().get()).isEmpty();
    }

    @Test
    void aBeliefIsMendedAtTheFieldKeptAndUndone(FxRobot robot) {
        Timing before = timing();
        robot.interact(() -> {
            model.openTiming();
            BeliefForm form = model.timingProperty().get().orElseThrow().form();
            assertThat(form.batchPercent().textProperty().get()).isEqualTo("12");
        });
        TextField first = field(robot, "warm-days to postembryo, half of them");
        assertThat(first.isFocused()).isTrue();
        robot.interact(first::clear);
        robot.write("70").type(KeyCode.TAB);
        TimingViewModel timing = model.timingProperty().get().orElseThrow();
        robot.interact(timing::keep);
        assertThat(timing.problemProperty().get()).startsWith("Not kept yet");
        assertThat(timing.form().medians().get(Stage.INSTAR1).problemProperty().get())
                .isEqualTo("more than the 70 of the stage before");
        assertThat(timing()).isEqualTo(before);
        robot.interact(() -> {
            first.setText("26.5");
            timing.form().batchPercent().textProperty().set("9");
            timing.form().rateProperty().set(BeliefForm.Rate.LINE);
            timing.form().lower().textProperty().set("12,5");
            timing.keep();
        });
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(timing.problemProperty().get()).isEmpty();
        assertThat(timing().medianWarmDays()).containsEntry(Stage.POSTEMBRYO, 26.5);
        assertThat(timing().batchSd()).isEqualTo(0.09);
        assertThat(timing().rate()).isEqualTo(new RateForm.Linear(12.5));
        assertThat(timing.basis().get(0)).contains("what you believe of this brood");
        robot.interact(timing::believeNothing);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(timing.basis().get(0)).contains("the general timing, an assumption");
        assertThat(timing.sources()).anyMatch(words -> words.startsWith("The ages: Common practice, no source"));
        assertThat(timing.sources())
                .last()
                .asString()
                .contains(Path.of("settings", "timings.json").toString());
        robot.interact(undos.get(1));
        robot.interact(undos.get(0));
        assertThat(timing()).isEqualTo(before);
    }

    @Test
    void everyStateIsPictured(FxRobot robot) {
        ScreenShots.of("broods-timing-learned", 1188, 752, look -> pictured(look, ""));
        ScreenShots.of("broods-timing-left-out", 1188, 752, look -> pictured(look, "wrong laying day"));
        assertThat(room.get().leftOut()).containsKey(TEACHER);
    }

    private BroodsView pictured(Appearance look, String leftOutBecause) {
        BroodsViewModel shown = new BroodsViewModel(desk(() -> {}));
        BroodsView view = new BroodsView(shown, look.paletteProperty());
        shown.chosenProperty().set(Optional.of(shown.lines().get(1)));
        if (!leftOutBecause.isEmpty() && room.get().leftOut().isEmpty()) {
            model.openTiming();
            model.timingProperty().get().orElseThrow().leaveOut(TEACHER, leftOutBecause);
        }
        shown.openTiming();
        if (!leftOutBecause.isEmpty()) {
            TimingViewModel timing = shown.timingProperty().get().orElseThrow();
            timing.form().lower().textProperty().set("90");
            timing.keep();
        }
        return view;
    }

    private PriorSource forecastFrom() {
        BroodView learner = room.get().brood(LEARNER).orElseThrow();
        return learner.forecast().orElseThrow().priorFrom();
    }

    private Timing timing() {
        return store.book().find(TEACHER).orElseThrow().brood().timing().orElseThrow();
    }

    private static TextField field(FxRobot robot, String name) {
        return robot.lookup((Node node) -> node instanceof TextField && name.equals(node.getAccessibleText()))
                .queryAs(TextField.class);
    }

    private static void walkTo(FxRobot robot, String name) {
        for (int step = 0; step < 40; step++) {
            Node focused = robot.window(0).getScene().getFocusOwner();
            String words = focused instanceof Button button && button.getAccessibleText() == null
                    ? button.getText()
                    : String.valueOf(focused.getAccessibleText());
            if (words.equals(name)) {
                return;
            }
            robot.type(KeyCode.TAB);
        }
        throw new AssertionError("Tab does not reach '" + name + "'");
    }

    private BroodsDesk desk(Runnable readAgain) {
        return new BroodsDesk(
                room,
                readAgain,
                InventedWays.in(store.book()),
                InventedBeliefs.in(store.book(), (at, undo) -> undos.add(undo)),
                InventedWays.NO_PAPER,
                new InlineRunner(),
                InstantSource.fixed(END),
                new DayWords(RoomFixture.ZONE),
                new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY),
                PhotoDesk.none(new InlineRunner(), new DayWords(RoomFixture.ZONE)));
    }
}
