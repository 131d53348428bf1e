package org.moultwright.ui.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.DataFormat;
import javafx.scene.input.DragEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.boot.DeskRoom;
import org.moultwright.boot.ShownDesk;
import org.moultwright.ui.SystemDrag;
import org.moultwright.ui.ToolkitThread;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A container is carried by its card, through the window, from the press of the button to the store. */
@ExtendWith(ApplicationExtension.class)
class CarryUiTest {
    @TempDir
    private Path folder;

    private final List<EventType<?>> events = Collections.synchronizedList(new ArrayList<>());
    private Stage stage;
    private ShownDesk desk;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @BeforeEach
    void open() {
        desk = ShownDesk.open(DeskRoom.DEMO, folder, stage, "shelf");
        desk.awaitParts("C1");
        desk.awaitHolds(() -> desk.focused().filter(ListView.class::isInstance).isPresent());
        Scene scene = stage.getScene();
        scene.addEventFilter(MouseEvent.DRAG_DETECTED, event -> events.add(event.getEventType()));
        scene.addEventFilter(DragEvent.ANY, event -> events.add(event.getEventType()));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void isLetGoOnAnotherContainerAndStandsThere(FxRobot robot) {
        carry(robot, "A1", "box 2");
        desk.awaitParts("A1 moved into box 2.", "in box 2 since 3 May");
        assertThat(events)
                .containsSubsequence(
                        MouseEvent.DRAG_DETECTED,
                        DragEvent.DRAG_ENTERED_TARGET,
                        DragEvent.DRAG_OVER,
                        DragEvent.DRAG_DROPPED,
                        DragEvent.DRAG_DONE);
    }

    /** Let go by the system over the window: what cannot be is said, and nothing has moved. */
    @Test
    void isToldWhereItCannotStand(FxRobot robot) {
        letGo(robot, "A2", "box 1");
        desk.awaitParts("A2 stands in box 1 already.");
        letGo(robot, "A2", "box 2");
        desk.awaitParts("A2 moved into box 2.");
    }

    private void letGo(FxRobot robot, String carried, String over) {
        ToolkitThread.ask(() -> {
            ClipboardContent content = new ClipboardContent();
            content.put(DataFormat.lookupMimeType("application/x-moultwright-container"), carried);
            SystemDrag drag = SystemDrag.of(content, stage.getScene());
            assertThat(drag.carryOver(card(robot, over))).isTrue();
            drag.letGoOver(card(robot, over));
            return true;
        });
    }

    private void carry(FxRobot robot, String from, String to) {
        robot.moveTo(card(robot, from))
                .press(MouseButton.PRIMARY)
                .moveBy(6, 6)
                .moveBy(12, 12)
                .moveTo(card(robot, to))
                .moveBy(2, 2)
                .release(MouseButton.PRIMARY);
    }

    private static Node card(FxRobot robot, String code) {
        return robot.lookup((Node node) -> node.getOnDragOver() != null
                        && node.lookupAll(".wording").stream()
                                .anyMatch(label -> label instanceof Label word && code.equals(word.getText())))
                .query();
    }
}
