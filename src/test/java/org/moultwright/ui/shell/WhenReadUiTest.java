package org.moultwright.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.ui.control.Sign;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** A room that is not read yet is said to be not read yet, never empty. */
@ExtendWith(ApplicationExtension.class)
class WhenReadUiTest {
    private static final String EMPTY = "No broods yet.";

    private final BooleanProperty isAwaited = new SimpleBooleanProperty(true);

    @Start
    void start(Stage stage) {
        Screen screen = new WhenRead(
                new PlainScreen(
                        new ScreenName("broods", "Broods", Sign.BROODS),
                        new StackPane(new Label(EMPTY)),
                        () -> {},
                        List.of()),
                isAwaited);
        assertThat(screen.node()).isSameAs(screen.node());
        stage.setScene(new Scene(new StackPane(screen.node()), 1000, 700));
        stage.show();
    }

    @Test
    void nothingIsCalledEmptyUntilItIsRead(FxRobot robot) {
        assertThat(said(robot)).singleElement().asString().startsWith("Not read yet: ");
        robot.interact(() -> isAwaited.set(false));
        assertThat(said(robot)).containsExactly(EMPTY);
    }

    private static List<String> said(FxRobot robot) {
        return robot
                .lookup((Node node) -> node instanceof Label && isSeen(node))
                .<Label>queryAllAs(Label.class)
                .stream()
                .map(Label::getText)
                .filter(words -> !words.isEmpty())
                .toList();
    }

    private static boolean isSeen(Node node) {
        for (Node part = node; part != null; part = part.getParent()) {
            if (!part.isVisible()) {
                return false;
            }
        }
        return true;
    }
}
