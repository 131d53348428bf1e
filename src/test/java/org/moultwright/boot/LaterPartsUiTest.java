package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.animation.AnimationTimer;
import javafx.scene.Scene;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.ui.ToolkitThread;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** What can wait comes into the window behind what is typed into, a part a frame, in its own place. */
@ExtendWith(ApplicationExtension.class)
class LaterPartsUiTest {
    private static final double WIDTH = 120;

    private final Region left = part("left");
    private final Region field = part("field");
    private final Region right = part("right");
    private final HBox row = new HBox(left, field, right);
    private final List<List<String>> frames = new ArrayList<>();

    @Start
    void show(Stage stage) {
        Scene scene = new Scene(row);
        scene.getStylesheets().add("data:text/css,.part{-fx-min-width:" + WIDTH + ";-fx-pref-width:" + WIDTH + ";}");
        stage.setScene(scene);
        LaterParts later = new LaterParts(List.of(right, left));
        stage.show();
        new AnimationTimer() {
            @Override
            public void handle(long now) {
                frames.add(row.getChildren().stream()
                        .map(node -> String.valueOf(node.getId()))
                        .toList());
                if (frames.size() == 8) {
                    stop();
                }
            }
        }.start();
        later.start();
    }

    @Test
    void theFirstTwoFramesAreWithoutThemAndThenTheyComeOneByOne() throws Exception {
        ShownDesk.await(() -> ToolkitThread.ask(() -> frames.size() == 8));

        assertThat(frames.subList(0, 3)).containsOnly(List.of("null", "field", "null"));
        assertThat(frames.subList(3, 4)).containsExactly(List.of("null", "field", "right"));
        assertThat(frames.subList(4, 8)).containsOnly(List.of("left", "field", "right"));
    }

    @Test
    void theirPlacesAreKept() throws Exception {
        double xBefore = ToolkitThread.ask(field::getLayoutX);
        ShownDesk.await(() -> ToolkitThread.ask(() -> frames.size() == 8));

        assertThat(xBefore).isEqualTo(WIDTH);
        assertThat(ToolkitThread.ask(field::getLayoutX)).isEqualTo(WIDTH);
    }

    @Test
    void whatTakesNoRoomStaysWhereItIs() {
        Region empty = part("empty");
        empty.setManaged(false);
        HBox place = new HBox(empty);

        new LaterParts(List.of(empty));

        assertThat(place.getChildren()).containsExactly(empty);
    }

    private static Region part(String id) {
        Region part = new Region();
        part.setId(id);
        part.getStyleClass().add("part");
        return part;
    }
}
