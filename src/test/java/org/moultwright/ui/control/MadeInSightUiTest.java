package org.moultwright.ui.control;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** What stands far below on a page is made as the page is scrolled to it. */
@ExtendWith(ApplicationExtension.class)
class MadeInSightUiTest {
    private static final int LONGEST_SECONDS = 20;

    private final Region above = new Region();
    private final VBox content = new VBox(above);
    private final Scrolled page = new Scrolled(content);

    @Start
    void start(Stage window) {
        above.setMinHeight(1000);
        content.getChildren()
                .add(new MadeInSight(10, () -> content.getChildren().setAll(above, new Label("made"))));
        window.setScene(new Scene(page, 300, 200));
        window.show();
    }

    @Test
    void itIsMadeWhenThePageIsScrolledToIt(FxRobot robot) throws TimeoutException {
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(isMade()).isFalse();
        assertThat(content.getHeight()).as("room is kept").isGreaterThan(1100);
        robot.interact(() -> page.setVvalue(0.3));
        assertThat(isMade()).isFalse();
        robot.interact(() -> page.setVvalue(0.9));
        WaitForAsyncUtils.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS, this::isMade);
    }

    @Test
    void itIsMadeWhenWhatStandsAboveGrowsShort(FxRobot robot) throws TimeoutException {
        robot.interact(() -> above.setMinHeight(100));
        WaitForAsyncUtils.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS, this::isMade);
    }

    private boolean isMade() {
        return content.getChildren().get(1) instanceof Label;
    }
}
