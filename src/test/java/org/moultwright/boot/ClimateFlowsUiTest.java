package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.device.serial.VirtualWire;
import org.moultwright.store.H2Store;
import org.moultwright.ui.ScreenShots;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** Calibrating, holding a display against a probe and finding out unknown lines, on the demo room's store. */
@ExtendWith(ApplicationExtension.class)
class ClimateFlowsUiTest {
    @TempDir
    private Path folder;

    private Stage stage;
    private ShownDesk desk;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @BeforeEach
    void openTheDemo() throws TimeoutException {
        desk = ShownDesk.open(DeskRoom.DEMO, folder, stage, "climate");
        ShownDesk.await(() -> desk.words().stream().anyMatch(words -> words.startsWith("Last 7 days:")));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void anIcePointRedressesThePastAndIsTakenBack(FxRobot robot) throws TimeoutException {
        assertThat(desk.words()).contains("Temperature: Not calibrated on this desk.");
        press(robot, "Calibrate");
        write(robot, "probe, °C", "0.45");
        ShownDesk.await(() -> desk.words().contains("Take off 0.45 °C at 27.0 °C, ± 0.13"));
        press(robot, "all readings of this probe");
        ShownDesk.await(
                () -> desk.words().stream()
                        .anyMatch(
                                words -> words.matches(
                                        "1\\d,\\d{3} past readings, from 26 February 2026 on, read 0.25 °C lower on average, by 0.25 at most\\.")));
        assertThat(desk.words()).anyMatch(words -> words.startsWith("It is the first of this probe."));
        ScreenShots.ofShown("climate-calibrate", stage.getScene(), desk.desk().appearance());
        press(robot, "Keep this calibration");
        ShownDesk.await(() -> desk.words().contains("Temperature: Calibrated 3 May 2026, good until 3 May 2027."));
        assertThat(desk.words()).anyMatch(words -> words.startsWith("Saved "));
        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        ShownDesk.await(() -> desk.words().contains("Temperature: Not calibrated on this desk."));
    }

    @Test
    void whatIsWrongIsSaidAtTheFieldAndNothingCanBeKept(FxRobot robot) throws TimeoutException {
        press(robot, "Calibrate");
        write(robot, "probe, °C", "120");
        robot.type(KeyCode.TAB);
        ShownDesk.await(() -> desk.words().contains("Write -40 to 85."));
        assertThat(button(robot, "Keep this calibration").isDisabled()).isTrue();
        press(robot, "Humidity");
        write(robot, "probe, %", "77.0");
        // OIML R 121:1996, table 1: NaCl at 25 °C keeps 75.3 %.
        ShownDesk.await(() -> desk.words().contains("Take off 1.70 % at 75.0 %, ± 0.52"));
        ScreenShots.ofShown(
                "climate-calibrate-salt", stage.getScene(), desk.desk().appearance());
    }

    @Test
    void aDisplayThatReadsHighIsToldWhatToSet(FxRobot robot) throws TimeoutException {
        press(robot, "Read a display off");
        write(robot, "display, °C", "28.3");
        robot.type(KeyCode.ENTER);
        ShownDesk.await(() -> desk.words().stream().anyMatch(words -> words.matches("Disagrees: reads 2\\.9 °C high")));
        assertThat(desk.words()).anyMatch(words -> words.matches("Trust the probe; set 30\\.0 to get 27\\.0\\."));
        assertThat(desk.words()).anyMatch(words -> words.startsWith("1 of 10 pairs: too few to say"));
        for (int pair = 0; pair < 9; pair++) {
            write(robot, "display, °C", "28." + pair);
            robot.type(KeyCode.ENTER);
            int known = pair + 2;
            ShownDesk.await(() -> desk.words().stream()
                    .anyMatch(words -> words.startsWith(known + " of 10 pairs") || words.startsWith("Over 10 pairs")));
        }
        assertThat(desk.words()).anyMatch(words -> words.startsWith("Over 10 pairs the display reads +"));
        ScreenShots.ofShown("climate-display", stage.getScene(), desk.desk().appearance());
    }

    @Test
    void anUnknownWireIsHeardExplainedTriedAndConnected(FxRobot robot) throws IOException, TimeoutException {
        VirtualWire.assumeAvailable();
        try (VirtualWire wire = VirtualWire.plugIn(folder)) {
            press(robot, "Connect a probe");
            press(robot, "Find out its lines");
            write(robot, "port", wire.port());
            press(robot, "Listen");
            ShownDesk.await(() -> desk.words().stream().anyMatch(words -> words.startsWith("Listening.")));
            awaitHeard(wire, "T=25.7C H=74.2%\r\n", "T=25.7C H=74.2%");
            ShownDesk.await(() -> desk.words().stream().anyMatch(words -> words.startsWith("explains ")));
            ScreenShots.ofShown("climate-finder", stage.getScene(), desk.desk().appearance());
            Button use = robot.lookup((Node node) ->
                            node instanceof Button button && button.getText().equals("Use it"))
                    .query();
            robot.interact(use::fire);
            assertThat(field(robot, "port").getText()).isEqualTo(wire.port());
        }
    }

    @Test
    void closingTheDeskEndsTheLinkBeforeTheStoreAndLosesNothing(FxRobot robot) throws IOException, TimeoutException {
        VirtualWire.assumeAvailable();
        try (VirtualWire wire = VirtualWire.plugIn(folder)) {
            press(robot, "Connect a probe");
            write(robot, "probe code", "P-9");
            write(robot, "port", wire.port());
            press(robot, "Connect");
            awaitHeard(wire, "26.4\r\n", "26.4 °C");
            desk.close();
            assertThat(Thread.getAllStackTraces().keySet())
                    .extracting(Thread::getName)
                    .doesNotContain("probe on " + wire.port());
            try (H2Store store = H2Store.open(folder.resolve("demo.store"))) {
                assertThat(store.readings().latest().get("P-9").temperatureCelsius())
                        .isEqualTo(26.4);
            }
        }
    }

    @Test
    void aProfileIsKeptOnlyOnceItsOwnLinesHold(FxRobot robot) throws TimeoutException {
        press(robot, "Connect a probe");
        press(robot, "Find out its lines");
        String text =
                "code: own-slash\ntitle: Two numbers\nport: 9600 8N1\nchannel: temperature C\nchannel: humidity %\n"
                        + "record: ^(?<temperature>{number})/(?<humidity>{number})$\ntest: \"25.7/74.2\" -> 25.7 ";
        robot.interact(() -> field(robot, "profile").setText(text + "99"));
        ShownDesk.await(() -> desk.words().contains("One thing is wrong; it cannot be used yet."));
        assertThat(desk.words()).contains("line 7: \"25.7/74.2\" is read as 25.7 74.2 but must be 25.7 99.0");
        assertThat(button(robot, "Keep this profile").isDisabled()).isTrue();
        ScreenShots.ofShown("climate-profile", stage.getScene(), desk.desk().appearance());
        robot.interact(() -> field(robot, "profile").setText(text + "74.2"));
        ShownDesk.await(() -> desk.words().contains("All its test lines hold. It can be kept."));
        press(robot, "Keep this profile");
        ShownDesk.await(() -> desk.words().contains("Kept. It can be chosen as own-slash."));
        assertThat(Files.exists(folder.resolve("profiles").resolve("own-slash.profile")))
                .isTrue();
    }

    /** What is said before the port is open is lost, so it is said until it is heard. */
    private void awaitHeard(VirtualWire wire, String line, String shown) throws TimeoutException {
        ShownDesk.await(() -> {
            wire.say(line);
            return desk.words().contains(shown);
        });
    }

    private void press(FxRobot robot, String words) throws TimeoutException {
        ShownDesk.await(() ->
                robot.lookup((Node node) -> isButton(node, words)).tryQuery().isPresent());
        Node found = robot.lookup((Node node) -> isButton(node, words)).query();
        robot.interact(() -> ((ButtonBase) found).fire());
    }

    private static boolean isButton(Node node, String words) {
        return node instanceof ButtonBase button && words.equals(button.getText()) && !button.isDisabled();
    }

    private static Button button(FxRobot robot, String words) {
        return robot.lookup((Node node) -> node instanceof Button button && words.equals(button.getText()))
                .query();
    }

    private void write(FxRobot robot, String name, String text) {
        TextInputControl field = field(robot, name);
        robot.interact(() -> {
            field.requestFocus();
            field.setText(text);
        });
    }

    private static TextInputControl field(FxRobot robot, String name) {
        return robot.lookup((Node node) ->
                        node instanceof TextInputControl && Objects.equals(node.getAccessibleText(), name))
                .query();
    }
}
