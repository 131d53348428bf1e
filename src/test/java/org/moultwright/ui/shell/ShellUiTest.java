package org.moultwright.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.language.Translations;
import org.moultwright.settings.Settings;
import org.moultwright.settings.TextSize;
import org.moultwright.settings.Theme;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.alarm.AlarmReach;
import org.moultwright.ui.alarm.InventedWatch;
import org.moultwright.ui.control.NumberField;
import org.moultwright.ui.control.Sign;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.settings.SettingsScreen;
import org.moultwright.ui.settings.SettingsViewModel;
import org.moultwright.ui.theme.Appearance;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class ShellUiTest {
    private static final Instant NOW = Instant.parse("2026-05-03T20:41:00Z");

    private final Appearance appearance = new Appearance();
    private final SettingsViewModel settings = new SettingsViewModel(Settings.DEFAULT, kept -> {}, new InlineRunner());
    private final ShellViewModel model = new ShellViewModel(new DayWords(ZoneOffset.UTC));

    @Start
    void start(javafx.stage.Stage stage) {
        Scene scene = new Scene(shell(), 1280, 800);
        appearance.dress(scene.getStylesheets());
        settings.bind(appearance.themeProperty(), appearance.textSizeProperty());
        stage.setScene(scene);
        stage.show();
    }

    private ShellView shell() {
        return new ShellView(
                model,
                new InventedWatch().model,
                List.of(new Page("one"), new Page("two")),
                new SettingsScreen(settings, AlarmReach.NOBODY, command -> "", new Translations(Path.of("none"))),
                new BlankSheet(),
                List.of());
    }

    @Test
    void keysSwitchScreens(FxRobot robot) {
        robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT2).release(KeyCode.CONTROL);
        assertThat(model.currentProperty().get()).isEqualTo("two");
        assertThat(robot.lookup("#two").tryQuery()).isPresent();
        robot.press(KeyCode.CONTROL).type(KeyCode.COMMA).release(KeyCode.CONTROL);
        assertThat(model.currentProperty().get()).isEqualTo("settings");
        robot.press(KeyCode.CONTROL).type(KeyCode.DIGIT1).release(KeyCode.CONTROL);
        assertThat(robot.lookup("#one").tryQuery()).isPresent();
    }

    @Test
    void whatStandsInForTheTopLineIsAsHighAsItIs(FxRobot robot) {
        Region line = (Region) robot.lookup(".top-line").query();
        Region standIn = new Region();
        standIn.getStyleClass().setAll("top-line", "stand-in");
        robot.interact(() -> ((VBox) line.getParent()).getChildren().add(standIn));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(standIn.getHeight()).isEqualTo(line.getHeight());
    }

    @Test
    void anArrowKeyInTheRailOpensTheScreenItComesTo(FxRobot robot) {
        robot.interact(() -> robot.lookup(".rail-button").query().requestFocus());
        robot.type(KeyCode.DOWN);
        assertThat(model.currentProperty().get()).isEqualTo("two");
        assertThat(robot.lookup("#two").tryQuery()).isPresent();
    }

    @Test
    void thePlaceInTheRailIsThatOfTheOpenScreen(FxRobot robot) {
        robot.interact(() -> robot.lookup("#text").query().requestFocus());
        robot.press(KeyCode.CONTROL).type(KeyCode.COMMA).release(KeyCode.CONTROL);
        WaitForAsyncUtils.waitForFxEvents();
        Node focused = robot.lookup(".rail-button").query().getScene().getFocusOwner();
        assertThat(focused.getAccessibleText()).isEqualTo("Settings");
        assertThat(((ToggleButton) focused).isSelected()).isTrue();
    }

    @Test
    void theQuestionMarkShowsTheKeysOfTheScreen(FxRobot robot) {
        robot.clickOn("#digits").write("?");
        assertThat(robot.lookup("one, keys").tryQuery()).isPresent();
        robot.type(KeyCode.ESCAPE);
        assertThat(robot.lookup(".over-sheet").query().isVisible()).isFalse();
    }

    @Test
    void aQuestionMarkInATextIsText(FxRobot robot) {
        robot.clickOn("#text").write("why?");
        assertThat(robot.lookup("#text").queryAs(TextField.class).getText()).isEqualTo("why?");
        assertThat(robot.lookup(".over-sheet").query().isVisible()).isFalse();
    }

    @Test
    void whatWasSavedCanBeTakenBackOnce(FxRobot robot) {
        AtomicInteger takenBack = new AtomicInteger();
        robot.interact(() -> model.saved(NOW, takenBack::incrementAndGet));
        robot.clickOn("Undo");
        assertThat(takenBack).hasValue(1);
        assertThat(robot.lookup("Undo").query().isVisible()).isFalse();
        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        assertThat(takenBack).hasValue(1);
    }

    @Test
    void theThemeChangesWhileRunning(FxRobot robot) {
        robot.press(KeyCode.CONTROL).type(KeyCode.COMMA).release(KeyCode.CONTROL);
        robot.clickOn("Dark");
        assertThat(appearance.themeProperty().get()).isEqualTo(Theme.DARK);
        assertThat(robot.lookup("Dark").queryAs(ToggleButton.class).isSelected())
                .isTrue();
    }

    @Test
    void aSilentProbeIsSaid(FxRobot robot) {
        robot.interact(() -> model.show(
                new TopLine(
                        List.of(new TopLine.ProbeNow("box 1", 27.04, NOW.minusSeconds(12 * 60))),
                        Optional.empty(),
                        Optional.empty()),
                NOW));
        assertThat(model.probes())
                .containsExactly(new ShellViewModel.ProbeWords(Tone.WARN, "27.0 °C", "box 1, silent for 12 min"));
    }

    /** A probe that reports nothing more would otherwise be missed just where least is shown. */
    @Test
    void inTheLargestTextSilentProbesAreNamed(FxRobot robot) {
        robot.interact(() -> {
            appearance.textSizeProperty().unbind();
            appearance.textSizeProperty().set(TextSize.LARGEST);
            model.show(
                    new TopLine(
                            List.of(
                                    new TopLine.ProbeNow("box 1", 27.0, NOW.minusSeconds(40)),
                                    new TopLine.ProbeNow("box 2", 26.0, NOW.minusSeconds(40)),
                                    new TopLine.ProbeNow("box 3", 25.0, NOW.minusSeconds(3600)),
                                    new TopLine.ProbeNow("box 4", 24.0, NOW.minusSeconds(3600)),
                                    new TopLine.ProbeNow("box 5", 23.0, NOW.minusSeconds(3600))),
                            Optional.of(new TopLine.TraysLeft(12, 12)),
                            Optional.of(new TopLine.NextMoult(
                                    "L08, L09, L10 and 2 more become slings", "30 April to 7 May"))),
                    NOW);
        });
        robot.interact(() -> {
            // What stands below wants all the room there is.
            model.tell(Tone.WARN, "A long story. ".repeat(400), "");
        });
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(topLine(robot))
                .contains(" box 3, silent for 60 min", " box 4, silent for 60 min", "1 more is silent")
                .contains("12", "L08, L09, L10 and 2 more become slings")
                .doesNotContain(" box 1, 40 s ago");
        Node line = robot.lookup(".top-line").query();
        assertThat(robot.lookup(".top-line-probe").<HBox>queryAll())
                .filteredOn(Node::isVisible)
                .allSatisfy(part -> assertThat(line.localToScene(line.getLayoutBounds())
                                .contains(part.localToScene(part.getLayoutBounds())))
                        .as("%s is whole", part.getChildren())
                        .isTrue());
    }

    /** The words of the top line that are seen. */
    private static List<String> topLine(FxRobot robot) {
        return robot.lookup(".top-line-probe").<HBox>queryAll().stream()
                .filter(Node::isVisible)
                .flatMap(part -> part.getChildren().stream())
                .filter(TextFlow.class::isInstance)
                .flatMap(flow -> ((TextFlow) flow).getChildren().stream())
                .map(text -> ((Text) text).getText())
                .toList();
    }

    /** Trays left and the next moult go on in a second line; what matters less gives way. */
    @Test
    void inTheLargestTextALongTopLineStaysInTheWindow(FxRobot robot) {
        robot.interact(() -> {
            appearance.textSizeProperty().unbind();
            appearance.textSizeProperty().set(TextSize.LARGEST);
            model.show(
                    new TopLine(
                            List.of(new TopLine.ProbeNow("the upper box by the window", 27.0, NOW.minusSeconds(40))),
                            Optional.of(new TopLine.TraysLeft(12, 12)),
                            Optional.of(new TopLine.NextMoult(
                                    "L08, L09, L10 and 2 more become slings", "30 April to 7 May"))),
                    NOW);
        });
        Node next = robot.lookup((Node node) -> node instanceof TextFlow flow
                        && flow.getChildren().stream()
                                .anyMatch(text -> ((Text) text).getText().startsWith("L08")))
                .query();
        Bounds stands = next.localToScene(next.getLayoutBounds());
        assertThat(stands.getMinX()).isGreaterThan(0);
        assertThat(stands.getMaxX()).isLessThanOrEqualTo(next.getScene().getWidth());
        assertThat(next.getScene().getRoot().minWidth(-1)).isLessThanOrEqualTo(1280);
    }

    @Test
    void theFrameIsPictured() {
        ScreenShots.of("settings", look -> {
            ShellViewModel pictured = new ShellViewModel(new DayWords(ZoneOffset.UTC));
            pictured.currentProperty().set("settings");
            pictured.show(
                    new TopLine(
                            List.of(
                                    new TopLine.ProbeNow("box 1", 27.0, NOW.minusSeconds(40)),
                                    new TopLine.ProbeNow("box 2", 26.9, NOW.minusSeconds(740))),
                            Optional.of(new TopLine.TraysLeft(2, 4)),
                            Optional.of(new TopLine.NextMoult("A1 and A2 become slings", "4 to 8 May"))),
                    NOW);
            pictured.saved(NOW, () -> {});
            pictured.noticeProperty()
                    .set(Optional.of(new Notice(
                            Tone.WARN,
                            "Your settings file could not be understood; the usual settings hold.",
                            "It is kept beside the new one as settings.txt.not-understood-1.")));
            return new ShellView(
                    pictured,
                    new InventedWatch().model,
                    List.of(new Page("one"), new Page("two")),
                    new SettingsScreen(settings, AlarmReach.NOBODY, command -> "", new Translations(Path.of("none"))),
                    new BlankSheet(),
                    List.of());
        });
    }

    /** A screen with one field for digits and one for text. */
    private record Page(String id, VBox box) implements Screen {
        Page(String id) {
            this(id, new VBox());
            NumberField digits = new NumberField("digits");
            digits.input().setId("digits");
            TextField text = new TextField();
            text.setId("text");
            box.setId(id);
            box.getChildren().addAll(digits, text);
        }

        @Override
        public ScreenName name() {
            return new ScreenName(id, id, Sign.ROUND);
        }

        @Override
        public Node node() {
            return box;
        }

        @Override
        public List<KeyHint> keys() {
            return List.of(new KeyHint("=", "looked, as expected"));
        }
    }
}
