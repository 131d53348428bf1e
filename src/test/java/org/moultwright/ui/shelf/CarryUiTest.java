package org.moultwright.ui.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
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
        letGo("A2", () -> card(robot, "box 1"));
        desk.awaitParts("A2 stands in box 1 already.");
        letGo("A2", () -> card(robot, "box 2"));
        desk.awaitParts("A2 moved into box 2.");
    }

    /** The whole of a box takes it, its empty floor and the trays in it too; what it would come into is marked. */
    @Test
    void goesIntoTheNearestContainerAroundThatCanHoldIt(FxRobot robot) {
        assertThat(marked(robot, "A1", () -> card(robot, "B1"))).containsExactly("box 2");
        letGo("A1", () -> card(robot, "B1"));
        desk.awaitParts("A1 moved into box 2.");
        assertThat(marked(robot, "A2", () -> floorBeside(robot, "B1"))).containsExactly("box 2");
        letGo("A2", () -> floorBeside(robot, "B1"));
        desk.awaitParts("A2 moved into box 2.");
        assertThat(marked(robot, "box 1", () -> card(robot, "A2"))).isEmpty();
        letGo("box 1", () -> card(robot, "A2"));
        desk.awaitParts("box 1 stands in INC-1 already.");
    }

    @Test
    void isToldWhereNothingCanHoldIt(FxRobot robot) {
        letGo("A1", () -> blank(robot));
        desk.awaitParts("A1 stays where it stood. Let it go over the container it is to stand in.");
        letGo("room", () -> card(robot, "B1"));
        desk.awaitParts("A room stands in nothing.");
    }

    private List<String> marked(FxRobot robot, String carried, Supplier<Node> over) {
        return ToolkitThread.ask(() -> {
            drag(carried).carryOver(over.get());
            return cards(robot)
                    .filter(node -> node.getPseudoClassStates().contains(PseudoClass.getPseudoClass("drop-here")))
                    .map(CarryUiTest::code)
                    .toList();
        });
    }

    private SystemDrag drag(String carried) {
        ClipboardContent content = new ClipboardContent();
        content.put(DataFormat.lookupMimeType("application/x-moultwright-container"), carried);
        return SystemDrag.of(content, stage.getScene());
    }

    private void letGo(String carried, Supplier<Node> over) {
        ToolkitThread.ask(() -> {
            SystemDrag drag = drag(carried);
            assertThat(drag.carryOver(over.get())).isTrue();
            drag.letGoOver(over.get());
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
        return cards(robot)
                .filter(node -> node.isVisible() && code.equals(code(node)))
                .findFirst()
                .orElseThrow();
    }

    private static Stream<Node> cards(FxRobot robot) {
        return Stream.of(".shelf-head", ".shelf-card").flatMap(kind -> robot.lookup(kind).queryAll().stream());
    }

    private static String code(Node card) {
        return ((Label) card.lookup(".wording")).getText();
    }

    /** Where a row of cards has room for another. */
    private static Node floorBeside(FxRobot robot, String code) {
        List<Node> row = card(robot, code).getParent().getChildrenUnmodifiable();
        return row.get(row.size() - 1);
    }

    /** Beneath all containers. */
    private static Node blank(FxRobot robot) {
        return robot.lookup(".shelf-cell").queryAll().stream()
                .filter(node -> node instanceof ListCell<?> cell && cell.isEmpty() && cell.isVisible())
                .findFirst()
                .orElseThrow();
    }
}
