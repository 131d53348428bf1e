package org.moultwright.ui.shelf;

import java.nio.file.Path;
import java.util.Objects;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.DataFormat;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
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

/** A shelf higher than its window. */
@ExtendWith(ApplicationExtension.class)
class FullShelfUiTest {
    @TempDir
    private Path folder;

    private Stage stage;
    private ShownDesk desk;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @BeforeEach
    void open(FxRobot robot) {
        desk = ShownDesk.open(DeskRoom.SIX_HUNDRED, folder, stage, "shelf");
        desk.awaitHolds(() -> holdsKeyboard(ListView.class));
        robot.interact(() -> stage.setHeight(420));
        robot.type(KeyCode.END);
        desk.awaitHolds(() -> isInSight("L12") && !isInSight("L01"));
    }

    @AfterEach
    void close(FxRobot robot) {
        // Other tests have the same window, which is as high as what they show.
        robot.interact(() -> stage.sizeToScene());
        desk.close();
    }

    @Test
    void aTrayIsFollowedToWhereItWasMoved(FxRobot robot) {
        robot.type(KeyCode.M);
        desk.awaitHolds(() -> holdsKeyboard(TextField.class));
        robot.write("nothing").type(KeyCode.ENTER);
        desk.awaitParts("L12 taken out.", "stands in nothing");
        desk.awaitHolds(() -> isInSight("L12") && !isInSight("L11"));
    }

    @Test
    void whatWasAddedIsBroughtIntoSight(FxRobot robot) {
        add(robot);
        desk.awaitHolds(() -> isInSight("box 9") && !isInSight("L12"));
    }

    /** What is read anew while the keeper looks elsewhere does not take the shelf away from under the eyes. */
    @Test
    void aKeeperWhoLooksElsewhereIsLeftThere(FxRobot robot) {
        add(robot);
        desk.awaitHolds(() -> isInSight("box 9"));
        robot.type(KeyCode.END);
        desk.awaitHolds(() -> isInSight("L12"));
        robot.interact(() -> list().scrollTo(0));
        desk.awaitHolds(() -> isInSight("L01"));
        robot.press(KeyCode.CONTROL).type(KeyCode.Z).release(KeyCode.CONTROL);
        desk.awaitParts("Taken back: box 9 added in box 1.");
        desk.awaitHolds(() -> list().lookupAll(".shelf-card").stream()
                .noneMatch(
                        card -> isShown(card) && ((ContainerCard) card).code().equals("box 9")));
        desk.awaitHolds(() -> isInSight("L01") && !isInSight("L12"));
    }

    private void add(FxRobot robot) {
        robot.type(KeyCode.A);
        desk.awaitHolds(() -> holdsKeyboard(TextField.class));
        robot.write("box 9").type(KeyCode.ENTER);
        desk.awaitParts("box 9 added in box 1.");
        desk.awaitHolds(() -> holdsKeyboard(ListView.class));
    }

    /** The hand is held still near an edge: the shelf goes by beneath it, and what lies there is marked. */
    @Test
    void whatIsCarriedToAnEdgeSeesTheShelfGoBy() {
        Bounds shelf = ToolkitThread.ask(() -> list().localToScene(list().getLayoutBounds()));
        SystemDrag drag = ToolkitThread.ask(this::drag);
        double middle = shelf.getMinX() + shelf.getWidth() / 4;
        ToolkitThread.ask(() -> drag.carryTo(middle, shelf.getMinY() + 8));
        desk.awaitHolds(() -> isInSight("L01") && !isInSight("L12"));
        desk.awaitHolds(() -> isMarked("INC-1"));
        ToolkitThread.ask(() -> drag.carryTo(middle, shelf.getMaxY() - 8));
        desk.awaitHolds(() -> isInSight("L12") && !isInSight("L01"));
    }

    /** The card it was taken by is out of sight when it is let go; the keys lead on all the same. */
    @Test
    void whatIsCarriedFarIsLetGo(FxRobot robot) {
        Bounds shelf = ToolkitThread.ask(() -> list().localToScreen(list().getLayoutBounds()));
        robot.moveTo(ToolkitThread.ask(() -> card("L12")))
                .press(MouseButton.PRIMARY)
                .moveBy(6, 6)
                .moveBy(12, 12)
                .moveTo(shelf.getMinX() + shelf.getWidth() / 4, shelf.getMinY() + 8);
        desk.awaitHolds(() -> isInSight("L01") && !isInSight("L12"));
        robot.moveTo(ToolkitThread.ask(() -> card("L01"))).moveBy(2, 2).release(MouseButton.PRIMARY);
        desk.awaitParts("L12 stands in box 1 already.");
        robot.type(KeyCode.HOME).type(KeyCode.END);
        desk.awaitHolds(() -> isInSight("L11") && !isInSight("L01"));
    }

    private Node card(String code) {
        return list().lookupAll(".shelf-card").stream()
                .filter(card -> isShown(card) && ((ContainerCard) card).code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private SystemDrag drag() {
        ClipboardContent content = new ClipboardContent();
        content.put(Objects.requireNonNull(DataFormat.lookupMimeType("application/x-moultwright-container")), "L12");
        return SystemDrag.of(content, stage.getScene());
    }

    private boolean holdsKeyboard(Class<?> kind) {
        return desk.focused().filter(kind::isInstance).isPresent();
    }

    private ListView<?> list() {
        return (ListView<?>) Objects.requireNonNull(stage.getScene().lookup(".shelf-list"));
    }

    private boolean isInSight(String code) {
        Bounds window = list().localToScene(list().getLayoutBounds());
        return list().lookupAll(".shelf-card").stream()
                .filter(card -> card instanceof ContainerCard shown
                        && shown.isVisible()
                        && shown.code().equals(code))
                .filter(FullShelfUiTest::isShown)
                .anyMatch(card -> window.contains(card.localToScene(card.getLayoutBounds())));
    }

    private boolean isMarked(String code) {
        return list().lookupAll(".shelf-head").stream()
                .filter(head -> head.getPseudoClassStates().contains(ShelfDrag.OVER))
                .anyMatch(head -> head.lookupAll(".wording").stream()
                        .anyMatch(words ->
                                words instanceof Label label && label.getText().equals(code)));
    }

    /** Cells the list keeps for later are not seen. */
    private static boolean isShown(Node node) {
        return node.isVisible() && (node.getParent() == null || isShown(node.getParent()));
    }
}
