package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Rectangle2D;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.ui.ToolkitThread;
import org.testfx.framework.junit5.ApplicationExtension;

/** A window stands where the last one was closed, where it can be seen there. */
@ExtendWith(ApplicationExtension.class)
class WindowPlaceUiTest {
    private static final WindowPlace PLACE = new WindowPlace(new Rectangle2D(40, 30, 1100, 700), false);

    @TempDir
    private Path folder;

    @Test
    void aWindowStandsWhereTheLastOneWasClosed() {
        WindowFile file = file();
        ToolkitThread.run(() -> {
            Stage first = DeskWindow.stage("desk", file);
            assertThat(first.getWidth()).as("nothing kept yet").isNaN();
            first.show();
            first.setMaximized(false);
            first.setX(40);
            first.setY(30);
            first.setWidth(1100);
            first.setHeight(700);
            first.hide();
        });
        assertThat(file.read()).contains(PLACE);
        ToolkitThread.run(() -> {
            Stage next = DeskWindow.stage("desk", file);
            assertThat(List.of(next.getX(), next.getY(), next.getWidth(), next.getHeight()))
                    .containsExactly(40.0, 30.0, 1100.0, 700.0);
            assertThat(next.isMaximized()).isFalse();
            next.show();
            next.setMaximized(true);
            next.hide();
        });
        assertThat(file.read()).as("and goes back to it").contains(new WindowPlace(PLACE.bounds(), true));
        ToolkitThread.run(
                () -> assertThat(DeskWindow.stage("desk", file).isMaximized()).isTrue());
    }

    @Test
    void aPlaceOnNoScreenThereIsNowIsPassedOver() {
        WindowFile file = file();
        for (Rectangle2D gone : List.of(
                new Rectangle2D(5000, 30, 1100, 700),
                new Rectangle2D(0, -300, 1100, 700),
                new Rectangle2D(0, 0, 9000, 700),
                new Rectangle2D(0, 0, 200, 100))) {
            file.keep(new WindowPlace(gone, false));
            ToolkitThread.run(() -> assertThat(DeskWindow.stage("desk", file).getWidth())
                    .as("%s", gone)
                    .isNaN());
        }
    }

    @Test
    void aWindowLaidToTheEdgeOfTheSecondScreenFits() {
        List<Rectangle2D> screens = List.of(new Rectangle2D(0, 0, 1920, 1080), new Rectangle2D(1920, 0, 1280, 1024));
        assertThat(new WindowPlace(new Rectangle2D(1912, -8, 1200, 1000), false).fits(screens))
                .isTrue();
        assertThat(new WindowPlace(new Rectangle2D(1500, 0, 1200, 1000), false).fits(screens))
                .isFalse();
        assertThat(PLACE.fits(List.of())).isFalse();
    }

    @Test
    void aFileThatSaysNothingIsPassedOver() throws IOException {
        WindowFile file = file();
        for (String line : List.of("", "40 30", "x y 1100 700", "40 30 1100 700 minimized", "999999 0 1100 700")) {
            Files.writeString(file.file().orElseThrow(), line);
            assertThat(file.read()).as(line).isEmpty();
        }
        WindowFile folderInTheWay = new WindowFile(Optional.of(folder));
        folderInTheWay.keep(PLACE);
        assertThat(folderInTheWay.read()).isEmpty();
        WindowFile.NONE.keep(PLACE);
        assertThat(WindowFile.NONE.read()).isEmpty();
    }

    private WindowFile file() {
        return new WindowFile(Optional.of(folder.resolve("window.txt")));
    }
}
