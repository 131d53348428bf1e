package org.moultwright.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.ui.control.Banner;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.theme.Appearance;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A page higher than its room, as in the largest text. */
@ExtendWith(ApplicationExtension.class)
class PageHostUiTest {
    private final Banner banner = new Banner(Tone.BAD);
    private final Button save = new Button("Save");
    private final Region fields = new Region();
    private final Region alarm = new Region();
    private PageHost host;

    @Start
    void start(Stage stage) {
        fields.setMinHeight(900);
        host = new PageHost();
        host.setContent(new VBox(banner, new Button("first"), fields, save));
        Scene scene = new Scene(new VBox(alarm, host), 400, 300);
        new Appearance().dress(scene.getStylesheets());
        stage.setScene(scene);
        stage.show();
    }

    @Test
    void whatHasTheKeyboardIsInSightThoughThePageGrewMeanwhile(FxRobot robot) {
        robot.interact(() -> {
            fields.setMinHeight(2000);
            save.requestFocus();
        });
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(isInSight(save)).isTrue();
    }

    @Test
    void whatHasTheKeyboardIsInSightThoughItsRoomIsLower(FxRobot robot) {
        robot.interact(() -> {
            fields.setMinHeight(100);
            fields.setMaxHeight(100);
            save.requestFocus();
        });
        WaitForAsyncUtils.waitForFxEvents();
        robot.interact(() -> alarm.setMinHeight(200));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(isInSight(save)).isTrue();
    }

    /** Else a keeper who saved would not learn that nothing was. */
    @Test
    void aBannerThatBeginsToSaySomethingIsInSight(FxRobot robot) {
        robot.interact(save::requestFocus);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(isInSight(save)).isTrue();
        robot.interact(() -> banner.sentenceProperty().set("Not saved: the disk is full."));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(isInSight(banner)).isTrue();
        robot.interact(() -> {
            host.setVvalue(1);
            banner.sentenceProperty().set("Not saved: there is no such folder.");
        });
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(host.getVvalue()).as("as the keeper moved it").isEqualTo(1);
    }

    private boolean isInSight(Node node) {
        Bounds at = node.localToScene(node.getLayoutBounds());
        Bounds room = host.localToScene(host.getLayoutBounds());
        return at.getMinY() >= room.getMinY() && at.getMaxY() <= room.getMaxY();
    }
}
