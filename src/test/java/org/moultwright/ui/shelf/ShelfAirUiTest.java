package org.moultwright.ui.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.MemoryBroodBook;
import org.moultwright.workflow.WatchView;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** The air on the shelf while nothing is written down: probes go on, and what they said grows older. */
@ExtendWith(ApplicationExtension.class)
class ShelfAirUiTest {
    private Instant now = RoomFixture.NOW;
    private List<WatchView.Place> heard = List.of();
    private ShelfViewModel model;
    private Scene scene;

    @BeforeEach
    void open(FxRobot robot) {
        robot.interact(() -> {
            model = new ShelfViewModel(
                    InventedShelfDesk.of(RoomFixture.room(), new MemoryBroodBook(), () -> heard, () -> now));
            scene = new Scene(new ShelfView(model), 1188, 752);
            new Appearance().dress(scene.getStylesheets());
            scene.snapshot(null);
        });
    }

    @Test
    void isWhatProbesSayNow(FxRobot robot) {
        assertThat(words(robot)).contains("27.0 °C, 74 % RH", "27.0 °C").doesNotContain("19.2 °C");
        heard("box 1", "P-1", 19.2);
        assertThat(words(robot))
                .contains("19.2 °C, 61 % RH", "2 s ago, P-1 in box 1", "19.2 °C", "2 s ago, P-1")
                .doesNotContain("27.0 °C");
    }

    @Test
    void growsOlderWhereNothingIsHeard(FxRobot robot) {
        assertThat(words(robot)).contains("40 s ago, P-1");
        now = now.plusSeconds(600);
        assertThat(words(robot)).contains("10 min ago, P-1").doesNotContain("40 s ago, P-1");
    }

    /** The keyboard may be on what can be done with the card. */
    @Test
    void leavesWhatCanBeDoneInPlace(FxRobot robot) {
        Node split = button("Split…");
        heard("box 1", "P-1", 19.2);
        assertThat(words(robot)).contains("19.2 °C");
        assertThat(button("Split…")).isSameAs(split);
    }

    @Test
    void ofAnotherDayStaysAsItWas(FxRobot robot) {
        robot.interact(() -> model.step(-1));
        List<String> then = words(robot);
        heard("box 1", "P-1", 19.2);
        assertThat(words(robot)).isEqualTo(then);
    }

    private void heard(String container, String probe, double celsius) {
        now = now.plusSeconds(240);
        heard = List.of(new WatchView.Place(container, probe, celsius, 61, Optional.of(now.minusSeconds(2))));
    }

    private List<String> words(FxRobot robot) {
        robot.interact(() -> {
            model.age();
            scene.snapshot(null);
        });
        return scene.getRoot().lookupAll("*").stream()
                .filter(Labeled.class::isInstance)
                .map(label -> ((Labeled) label).getText())
                .filter(Objects::nonNull)
                .toList();
    }

    private Node button(String word) {
        return scene.getRoot().lookupAll(".button").stream()
                .filter(node -> node instanceof Button button && word.equals(button.getText()))
                .findFirst()
                .orElseThrow();
    }
}
