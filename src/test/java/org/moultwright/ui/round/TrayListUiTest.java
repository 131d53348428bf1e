package org.moultwright.ui.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

@ExtendWith(ApplicationExtension.class)
class TrayListUiTest {
    /** Above the sheet there is little height and much width. */
    @Test
    void inAWideListATrayIsToldInOneLine(FxRobot robot) {
        robot.interact(() -> {
            TrayListView trays = new TrayListView(new RoundViewModel(new InventedRoom().desk()));
            Stage window = new Stage();
            window.setScene(new Scene(trays, 190, 400));
            window.show();
            assertThat(lines(trays)).isEmpty();
            trays.resize(1000, 400);
            trays.layout();
            trays.lookupAll(".tray-row").forEach(row -> row.resize(980, 44));
            assertThat(lines(trays)).isNotEmpty();
            trays.lookupAll(".tray-row").forEach(row -> row.resize(170, 65));
            assertThat(lines(trays)).as("and in two again").isEmpty();
            window.close();
        });
    }

    private static Set<Node> lines(TrayListView trays) {
        return trays.lookupAll(".tray-line");
    }
}
