package org.moultwright.ui.potting;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.ui.RoomFixture;
import org.moultwright.workflow.MemoryBroodBook;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** More trays on the bench than a page shows: those below are made as the keeper comes to them. */
@ExtendWith(ApplicationExtension.class)
class LongBenchUiTest {
    private static final int BROODS = 12;
    private static final int FIELDS = 4 * BROODS;
    private static final String LABELS = "pot size, on the label";

    @Start
    void start(Stage stage) {
        PottingDesk small =
                new InventedTrays(new MemoryBroodBook(), 22, 11).desk(new DrawnLabels(), Path.of("labels.pdf"));
        PottingDesk desk = new PottingDesk(
                new ReadOnlyObjectWrapper<>(RoomFixture.crowded(BROODS)),
                small.readAgain(),
                small.potSlings(),
                small.undo(),
                small.pattern(),
                small.design(),
                small.printer(),
                small.pdfChooser(),
                small.sheetPrinter(),
                small.stack(),
                small.runner(),
                small.saveLine(),
                small.clock(),
                small.days(),
                small.vocabulary());
        ShownBench.show(new PottingScreen(desk), stage);
    }

    @Test
    void tabGoesThroughAllOfThemAndOnToTheLabels(FxRobot robot) {
        assertThat(robot.lookup((TextField field) -> true).queryAll()).hasSizeLessThan(FIELDS);
        Set<String> walked = new LinkedHashSet<>();
        for (int field = 0; field <= FIELDS; field++) {
            walked.add(focused(robot));
            robot.type(KeyCode.TAB);
            robot.interact(() -> robot.window(0).getScene().getRoot().layout());
            WaitForAsyncUtils.waitForFxEvents();
        }
        assertThat(walked)
                .hasSize(FIELDS + 1)
                .contains("taken from CC-26-01 A1", "pot size for CC-26-07 A1", "pot size for CC-26-12 A2", LABELS);
    }

    private static String focused(FxRobot robot) {
        return String.valueOf(robot.window(0).getScene().getFocusOwner().getAccessibleText());
    }
}
