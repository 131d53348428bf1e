package org.moultwright.ui.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.HandReading;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.store.H2Store;
import org.moultwright.task.InlineRunner;
import org.moultwright.task.Job;
import org.moultwright.task.Outcome;
import org.moultwright.task.Runner;
import org.moultwright.task.Work;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.shell.KeyHint;
import org.moultwright.ui.shell.PlainScreen;
import org.moultwright.ui.shell.Screen;
import org.moultwright.ui.shell.ScreenName;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.ReadingSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Writing in readings, a day's lowest and highest, and files of readings: by keys alone, into a real store. */
@ExtendWith(ApplicationExtension.class)
class IntakeUiTest {
    private static final Instant NOW = IntakePictures.NOW;
    private static final String HAND = HandReading.probeIn("box 1");

    @TempDir
    static Path folder;

    private H2Store store;
    private Path file = Path.of("");
    private Runner intake = new InlineRunner();
    private Screen screen;

    @Start
    void start(Stage stage) throws IOException {
        store = H2Store.open(Files.createTempDirectory(folder, "store").resolve("room.store"));
        store.book().takeIn(IntakePictures.record(), ReadingSource.of(IntakePictures.record()));
        IntakeDesk base = IntakePictures.desk(Path.of(""), store.book(), store.climate(), store.bulkReadings());
        Intake writing = new Intake(new IntakeDesk(
                base.room(),
                base.readAgain(),
                base.write(),
                base.undo(),
                base.files(),
                base.takeIn(),
                () -> Optional.of(file),
                base.keeper(),
                new Runner() {
                    @Override
                    public <T> Job run(Work<T> work, Watcher watcher, Consumer<Outcome<T>> whenEnded) {
                        return intake.run(work, watcher, whenEnded);
                    }
                },
                base.clock(),
                base.days()));
        VBox under = new VBox(writing.menu());
        screen = writing.over(new PlainScreen(
                new ScreenName("climate", "Climate", Sign.CLIMATE),
                under,
                () -> under.getChildren().get(0).requestFocus(),
                List.of()));
        Scene scene = new Scene((Parent) screen.node(), 1188, 752);
        new Appearance().dress(scene.getStylesheets());
        stage.setScene(scene);
        stage.show();
        screen.shown();
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void theMenuLeadsToAllThreeAndEscapeLeadsBack(FxRobot robot) {
        assertThat(screen.keys()).extracting(KeyHint::key).contains("Ctrl + R", "Ctrl + L", "Ctrl + O");
        robot.type(KeyCode.SPACE).type(KeyCode.DOWN).type(KeyCode.ENTER);
        assertThat(says(robot, "Write in a reading")).isTrue();
        robot.type(KeyCode.ESCAPE);
        assertThat(says(robot, "Write in a reading")).isFalse();
        ctrl(robot, KeyCode.L);
        assertThat(says(robot, "Write in a day's lowest and highest")).isTrue();
    }

    @Test
    void aReadingIsTypedKeptAndTakenBack(FxRobot robot) {
        ctrl(robot, KeyCode.R);
        robot.write("26,4").type(KeyCode.TAB).write("71").type(KeyCode.ENTER);
        assertThat(says(robot, "box 1, 3 May at 19:41: 26.4 °C is kept.")).isTrue();
        assertThat(hand().size()).isEqualTo(1);
        assertThat(hand().reading(0).takenAt()).isEqualTo(NOW);
        assertThat(hand().temperatureCelsius(0)).isEqualTo(26.4);
        assertThat(hand().humidityPercent(0)).isEqualTo(71);
        assertThat(hand().quality(0)).isEqualTo(Quality.GOOD);
        back(robot).type(KeyCode.TAB).release(KeyCode.SHIFT);
        back(robot).type(KeyCode.TAB).release(KeyCode.SHIFT);
        robot.type(KeyCode.SPACE);
        assertThat(says(robot, "Taken back.")).isTrue();
        assertThat(hand().isEmpty()).isTrue();
    }

    @Test
    void theTimeItWasReadIsTypedToo(FxRobot robot) {
        ctrl(robot, KeyCode.R);
        robot.write("25.9").type(KeyCode.TAB).type(KeyCode.TAB).write("0815").type(KeyCode.ENTER);
        assertThat(hand().reading(0).takenAt()).isEqualTo("2026-05-03T07:15:00Z");
    }

    @Test
    void anUnlikelyFigureIsAskedAboutOnce(FxRobot robot) {
        ctrl(robot, KeyCode.R);
        robot.write("72").type(KeyCode.ENTER);
        assertThat(hand().isEmpty()).isTrue();
        assertThat(texts(robot)).anyMatch(text -> text.startsWith("Is it really 72.0 °C in there?"));
        robot.type(KeyCode.ENTER);
        assertThat(hand().size()).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "'', '', '', Type the temperature",
        "warm, '', '', Type the temperature",
        "1e3, '', '', Type the temperature",
        "99, '', '', No air here",
        "26, 101, '', Type the humidity",
        "26, wet, '', Type the humidity",
        "26, 70, 25:00, Type the time",
        "26, 70, 23:59, That time is yet to come"
    })
    void whatCannotBeIsRefusedInWordsAndNothingIsLost(
            String celsius, String humidity, String time, String words, FxRobot robot) {
        ctrl(robot, KeyCode.R);
        robot.write(celsius)
                .type(KeyCode.TAB)
                .write(humidity)
                .type(KeyCode.TAB)
                .write(time)
                .type(KeyCode.ENTER);
        assertThat(texts(robot)).anyMatch(text -> text.startsWith(words));
        assertThat(hand().isEmpty()).isTrue();
        assertThat(field(robot, "temperature in °C").getText()).isEqualTo(celsius);
        assertThat(field(robot, "humidity in %").getText()).isEqualTo(humidity);
    }

    @Test
    void aDaysLowestAndHighestAreTypedAndTypedAnew(FxRobot robot) {
        ctrl(robot, KeyCode.L);
        robot.write("27").type(KeyCode.TAB).write("24.5").type(KeyCode.ENTER);
        assertThat(says(robot, "The lowest is above the highest. Did they change places?"))
                .isTrue();
        clear(robot).write("24.5").type(KeyCode.TAB);
        clear(robot).write("27").type(KeyCode.ENTER);
        assertThat(says(robot, "box 1, 3 May until now: 24.5 to 27.0 °C is kept."))
                .isTrue();
        Instant midnight = Instant.parse("2026-05-02T23:00:00Z");
        assertThat(store.climate().extremes()).containsExactly(new Extremes("box 1", midnight, NOW, 24.5, 27));
        robot.write("24")
                .type(KeyCode.TAB)
                .write("27")
                .type(KeyCode.TAB)
                .write("60")
                .type(KeyCode.TAB)
                .write("80");
        robot.type(KeyCode.ENTER);
        assertThat(says(robot, "box 1, 3 May until now: 24.0 to 27.0 °C is kept in place of 24.5 to 27.0 °C."))
                .isTrue();
        assertThat(store.climate().extremes()).hasSize(2);
    }

    @Test
    void whatWasRememberedSinceTheLastResetIsWrittenAsThat(FxRobot robot) {
        Instant evening = NOW.minus(Duration.ofHours(23));
        keepBefore(new Extremes("box 1", evening.minus(Duration.ofHours(24)), evening, 24, 27));
        ctrl(robot, KeyCode.L);
        back(robot).type(KeyCode.TAB).release(KeyCode.SHIFT);
        robot.type(KeyCode.SPACE)
                .type(KeyCode.TAB)
                .write("25")
                .type(KeyCode.TAB)
                .write("28")
                .type(KeyCode.ENTER);
        assertThat(says(robot, "box 1, since 2 May at 20:41 until now: 25.0 to 28.0 °C is kept."))
                .isTrue();
        assertThat(store.climate().extremes()).contains(new Extremes("box 1", evening, NOW, 25, 28));
        assertThat(texts(robot))
                .containsSubsequence(
                        "2 May, 20:41 to 3 May, 19:41: 25.0 to 28.0 °C",
                        "1 May, 20:41 to 2 May, 20:41: 24.0 to 27.0 °C");
    }

    /** Lisbon's clocks leapt over the hour from 1:00 on 29 March 2026 (tzdb): that day had 23 hours. */
    @Test
    void anEarlierDayIsWholeAndAsLongAsItWas(FxRobot robot) {
        ctrl(robot, KeyCode.L);
        back(robot).type(KeyCode.TAB).release(KeyCode.SHIFT);
        clear(robot)
                .write("29.3.2026")
                .type(KeyCode.TAB)
                .write("22")
                .type(KeyCode.TAB)
                .write("26")
                .type(KeyCode.ENTER);
        assertThat(store.climate().extremes()).singleElement().satisfies(kept -> {
            assertThat(kept.from()).isEqualTo("2026-03-29T00:00:00Z");
            assertThat(kept.length()).isEqualTo(Duration.ofHours(23));
        });
    }

    @Test
    void aFileIsLookedAtAndTakenIn(FxRobot robot) {
        file = IntakePictures.loggerFile();
        ctrl(robot, KeyCode.O);
        assertThat(meanings(robot)).containsExactly("NOTHING", "DATE_AND_TIME", "CELSIUS", "HUMIDITY", "NOTHING");
        assertThat(texts(robot)).contains("1 April 2026, 00:00: 26.0 °C, 70 %", "“ERR” is no temperature");
        robot.type(KeyCode.ENTER);
        assertThat(says(robot, "Give the probe a code of your choice, such as P-3."))
                .isTrue();
        robot.write("P-9").type(KeyCode.ENTER);
        assertThat(says(robot, "P-9 in box 1: 200 readings taken in. 40 rows are none."))
                .isTrue();
        assertThat(texts(robot)).contains("line 7");
        assertThat(store.readings().series("P-9", Instant.EPOCH, NOW).size()).isEqualTo(200);
        assertThat(store.book().find("XX-26-A").orElseThrow().probeStays())
                .singleElement()
                .satisfies(stay -> {
                    assertThat(stay.probe()).isEqualTo("P-9");
                    assertThat(stay.container()).isEqualTo("box 1");
                    assertThat(stay.span().from()).isEqualTo("2026-03-31T23:00:00Z");
                });
        robot.type(KeyCode.ENTER);
        ctrl(robot, KeyCode.O);
        robot.write("P-9").type(KeyCode.ENTER);
        assertThat(says(robot, "P-9 in box 1: all 200 readings were here already. 40 rows are none."))
                .isTrue();
    }

    @Test
    void aColumnIsGivenAnotherMeaningByKeysAndTheRowsFollow(FxRobot robot) throws IOException {
        file = Files.writeString(folder.resolve("two.csv"), "2026-04-01 10:00;20.5;26.4\n2026-04-01 11:00;20.6;26.5\n");
        ctrl(robot, KeyCode.O);
        assertThat(texts(robot)).contains("1 April 2026, 10:00: 20.5 °C, 26 %");
        robot.write("P-9");
        choose(robot, "meaning of column 3", -7);
        assertThat(meanings(robot)).containsExactly("DATE_AND_TIME", "CELSIUS", "DATE_AND_TIME");
        robot.type(KeyCode.ENTER);
        assertThat(texts(robot)).anyMatch(text -> text.startsWith("Say which one column holds the time"));
        choose(robot, "meaning of column 3", 5);
        choose(robot, "meaning of column 2", -6);
        assertThat(meanings(robot)).containsExactly("DATE_AND_TIME", "NOTHING", "CELSIUS");
        assertThat(texts(robot)).contains("1 April 2026, 10:00: 26.4 °C");
        robot.type(KeyCode.ENTER);
        assertThat(store.readings().series("P-9", Instant.EPOCH, NOW).temperatureCelsius(0))
                .isEqualTo(26.4);
    }

    @Test
    void theZoneOfTheClockIsChosen(FxRobot robot) throws IOException {
        file = Files.writeString(folder.resolve("utc.csv"), "2026-04-01 10:00;20.5\n2026-04-01 11:00;20.6\n");
        ctrl(robot, KeyCode.O);
        robot.write("P-9").type(KeyCode.TAB).type(KeyCode.TAB);
        clear(robot).write("Nowhere").type(KeyCode.ENTER);
        assertThat(texts(robot)).anyMatch(text -> text.startsWith("Type the zone"));
        clear(robot).write("UTC").type(KeyCode.ENTER);
        assertThat(store.readings().series("P-9", Instant.EPOCH, NOW).reading(0).takenAt())
                .isEqualTo("2026-04-01T10:00:00Z");
    }

    @Test
    void aFileThatMakesNoSenseAndOneThatIsGoneAreRefused(FxRobot robot) throws IOException {
        file = Files.writeString(folder.resolve("words.csv"), "name;colour\nAda;green\n");
        ctrl(robot, KeyCode.O);
        robot.write("P-9").type(KeyCode.ENTER);
        assertThat(texts(robot)).anyMatch(text -> text.startsWith("Say which one column holds the time"));
        robot.type(KeyCode.ESCAPE);
        file = folder.resolve("gone.csv");
        ctrl(robot, KeyCode.O);
        assertThat(texts(robot)).anyMatch(text -> text.contains("'gone.csv' cannot be read"));
        assertThat(store.readings().latest()).isEmpty();
    }

    @Test
    void aStoppedOneLeavesNothing(FxRobot robot) {
        List<Runnable> cancelled = new ArrayList<>();
        intake = new Runner() {
            @Override
            public <T> Job run(Work<T> work, Watcher watcher, Consumer<Outcome<T>> whenEnded) {
                watcher.progressed(0.4, "20000 readings so far");
                cancelled.add(() -> whenEnded.accept(new Outcome.Cancelled<>()));
                return cancelled.get(0)::run;
            }
        };
        file = IntakePictures.loggerFile();
        ctrl(robot, KeyCode.O);
        robot.write("P-9").type(KeyCode.ENTER);
        assertThat(says(robot, "20000 readings so far")).isTrue();
        robot.type(KeyCode.SPACE);
        assertThat(says(robot, "Stopped. Nothing of box-1-april.csv was taken in."))
                .isTrue();
        assertThat(store.readings().latest()).isEmpty();
    }

    @Test
    void itsPagesArePictured() {
        ScreenShots.of("intake-reading", 1188, 752, look -> IntakePictures.reading());
        ScreenShots.of("intake-extremes", 1188, 752, look -> IntakePictures.extremes());
        ScreenShots.of("intake-file", 1188, 752, look -> IntakePictures.file());
        ScreenShots.of("intake-taken", 1188, 752, look -> IntakePictures.taken());
        assertThat(Path.of("target", "screenshots", "intake-file-dark.png")).isNotEmptyFile();
    }

    private void keepBefore(Extremes extremes) {
        IntakePictures.desk(Path.of(""), store.book(), store.climate(), store.bulkReadings())
                .write()
                .keep(extremes);
    }

    private ReadingSeries hand() {
        return store.readings().series(HAND, Instant.EPOCH, NOW.plusSeconds(1));
    }

    /** Opens a choice and moves it by so many steps, with keys alone. */
    private static void choose(FxRobot robot, String name, int steps) {
        robot.interact(() -> choice(robot, name).requestFocus());
        robot.type(KeyCode.SPACE);
        for (int i = 0; i < Math.abs(steps); i++) {
            robot.type(steps < 0 ? KeyCode.UP : KeyCode.DOWN);
        }
        robot.type(KeyCode.ENTER);
    }

    private static List<String> meanings(FxRobot robot) {
        return robot
                .lookup((ChoiceBox<?> choice) -> choice.getAccessibleText().startsWith("meaning"))
                .queryAllAs(ChoiceBox.class)
                .stream()
                .map(choice -> String.valueOf(choice.getValue()))
                .toList();
    }

    private static ChoiceBox<?> choice(FxRobot robot, String name) {
        return robot.lookup((ChoiceBox<?> choice) -> name.equals(choice.getAccessibleText()))
                .query();
    }

    private static TextField field(FxRobot robot, String name) {
        return robot.lookup((TextField field) -> name.equals(field.getAccessibleText()))
                .query();
    }

    private static FxRobot clear(FxRobot robot) {
        ctrl(robot, KeyCode.A);
        return robot.type(KeyCode.BACK_SPACE);
    }

    private static FxRobot back(FxRobot robot) {
        return robot.press(KeyCode.SHIFT);
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
