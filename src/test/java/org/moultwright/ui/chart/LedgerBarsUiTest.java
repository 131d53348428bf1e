package org.moultwright.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.ui.theme.Token;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/** A number that is cut is another number, and an account without its row is an animal nobody sees. */
@ExtendWith(ApplicationExtension.class)
class LedgerBarsUiTest {
    private static final int WIDTH = 320;

    private static final int FIRST = 3;
    private static final int ALL = 12;

    /** The few rows are rounded up to one, and that is taken four times. */
    private static final double WHOLE_PIXELS = 4;

    private LedgerBars bars;
    private Scene scene;

    @Start
    void start(Stage stage) {
        Appearance appearance = new Appearance();
        bars = new LedgerBars(appearance.paletteProperty());
        scene = new Scene(new VBox(bars), WIDTH, 60);
        scene.setFill(Color.WHITE);
        appearance.dress(scene.getStylesheets());
        stage.setScene(scene);
        stage.show();
    }

    @ParameterizedTest
    @ValueSource(ints = {9, 118, 20_000, 1_000_000})
    void theNumberOfTheLongestBarIsWhole(int animals, FxRobot robot) {
        robot.interact(() -> bars.bars()
                .setAll(List.of(
                        new LedgerBars.Bar("Opened", animals, false, Token.EGG),
                        new LedgerBars.Bar("In trays", animals, false, Token.INSTAR1))));
        robot.interact(() -> {
            WritableImage picture = scene.snapshot(null);
            assertThat(IntStream.range(0, (int) picture.getHeight())
                            .filter(y -> IntStream.range(WIDTH - 2, WIDTH).anyMatch(x -> isInk(picture, x, y)))
                            .count())
                    .as("rows with ink at the right edge")
                    .isZero();
        });
    }

    @Test
    void everyAccountHasItsRowHoweverLowThePlace(FxRobot robot) {
        double few = height(FIRST, robot);
        assertThat(height(ALL, robot)).isCloseTo(few * ALL / FIRST, within(WHOLE_PIXELS));
    }

    private double height(int accounts, FxRobot robot) {
        robot.interact(() -> bars.bars().setAll(accounts(accounts)));
        WaitForAsyncUtils.waitForFxEvents();
        return bars.getHeight();
    }

    private static List<LedgerBars.Bar> accounts(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> new LedgerBars.Bar("account " + i, 1, true, Token.DEAD))
                .toList();
    }

    private static boolean isInk(WritableImage picture, int x, int y) {
        return picture.getPixelReader().getColor(x, y).getBrightness() < 0.6;
    }
}
