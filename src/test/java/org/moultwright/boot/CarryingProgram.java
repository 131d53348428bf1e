package org.moultwright.boot;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.embed.swing.SwingFXUtils;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.image.WritableImage;
import javafx.scene.input.DragEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.moultwright.ui.ToolkitThread;

/** Opens the demo room's shelf in a window of a true display and carries a tray into another box by the mouse. */
final class CarryingProgram {
    static final String CARRIED = "carried";
    private static final PseudoClass OVER = PseudoClass.getPseudoClass("drop-here");

    private final Scene scene;
    private final Robot robot = ToolkitThread.ask(Robot::new);
    private volatile boolean isOnItsWay;

    private CarryingProgram(Stage stage) {
        this.scene = stage.getScene();
        scene.addEventFilter(DragEvent.ANY, event -> isOnItsWay = true);
    }

    /** Arguments: the folder of the room, the picture to take in the midst. */
    public static void main(String[] arguments) throws IOException, TimeoutException {
        Platform.startup(() -> {});
        Stage stage = ToolkitThread.ask(Stage::new);
        ShownDesk desk = ShownDesk.open(DeskRoom.DEMO, Path.of(arguments[0]), stage, "shelf");
        desk.awaitParts("C1", "box 2");
        new CarryingProgram(stage).carry("A1", "box 2", Path.of(arguments[1]));
        desk.awaitParts("A1 moved into box 2.");
        desk.close();
        System.out.println(CARRIED);
        System.exit(0);
    }

    private void carry(String from, String to, Path picture) throws IOException, TimeoutException {
        Point2D start = middle(from);
        move(start);
        ToolkitThread.ask(() -> {
            robot.mousePress(MouseButton.PRIMARY);
            return true;
        });
        int[] steps = {0};
        ShownDesk.await(() -> {
            move(start.add(++steps[0], steps[0] / 2.0));
            return isOnItsWay;
        });
        Point2D end = middle(to);
        ShownDesk.await(() -> {
            move(end.add(++steps[0] % 5, 0));
            return ToolkitThread.ask(() -> card(to).getPseudoClassStates().contains(OVER));
        });
        WritableImage midst = ToolkitThread.ask(() -> robot.getScreenCapture(null, 0, 0, 1280, 800));
        BufferedImage image = SwingFXUtils.fromFXImage(midst, null);
        ImageIO.write(image, "png", picture.toFile());
        ToolkitThread.ask(() -> {
            robot.mouseRelease(MouseButton.PRIMARY);
            return true;
        });
    }

    private void move(Point2D to) {
        ToolkitThread.ask(() -> {
            robot.mouseMove(to);
            return true;
        });
    }

    private Point2D middle(String code) {
        return ToolkitThread.ask(() -> {
            Node card = card(code);
            Bounds place = card.localToScreen(card.getBoundsInLocal());
            return new Point2D(place.getMinX() + place.getWidth() / 3, place.getCenterY());
        });
    }

    private Node card(String code) {
        return Stream.of(".shelf-head", ".shelf-card")
                .flatMap(kind -> scene.getRoot().lookupAll(kind).stream())
                .filter(node -> node.isVisible() && says(node, code))
                .findFirst()
                .orElseThrow();
    }

    private static boolean says(Node card, String code) {
        return card.lookupAll(".wording").stream()
                .anyMatch(label -> label instanceof Label word && code.equals(word.getText()));
    }
}
