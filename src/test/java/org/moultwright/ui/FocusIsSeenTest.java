package org.moultwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.settings.Theme;
import org.moultwright.ui.theme.Contrast;
import org.moultwright.ui.theme.Token;

/** Whatever Tab stops at shows that it has the keyboard, in every view and both themes. */
@ExtendWith(OneWindow.class)
class FocusIsSeenTest {
    /** WCAG 2.2, success criterion 2.4.13: the pixels that change do so by this contrast. */
    private static final double ENOUGH_FOR_A_SIGN = 3;

    /** A caret alone, which comes and goes, changes fewer. */
    private static final int PIXELS_AT_LEAST = 40;

    @TempDir
    private static Path folder;

    static Stream<EveryViewTest.View> views() {
        return EveryViewTest.viewsOfSmallRooms(folder);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("views")
    void whereTabStops(EveryViewTest.View view, Stage window) {
        EveryViewTest.Worn worn = view.content().get();
        for (Theme theme : Theme.values()) {
            ToolkitThread.run(() -> {
                worn.appearance().themeProperty().set(theme);
                Scene scene = worn.scene(1280, 800);
                window.setScene(scene);
                window.show();
                layOut(scene);
                assertThat(unseen(scene, ground(worn)))
                        .as("shows no focus in %s", theme)
                        .isEmpty();
            });
        }
    }

    /** What does not fill itself stands on a card. */
    private static SnapshotParameters ground(EveryViewTest.Worn worn) {
        SnapshotParameters ground = new SnapshotParameters();
        ground.setFill(worn.appearance().paletteProperty().get().colour(Token.SURFACE));
        return ground;
    }

    private static List<String> unseen(Scene scene, SnapshotParameters ground) {
        List<String> unseen = new ArrayList<>();
        List<Node> expected = FocusWalk.expected(scene.getRoot());
        if (expected.size() < 2) {
            return unseen;
        }
        expected.get(0).requestFocus();
        List<Node> stops = FocusWalk.stops(scene);
        for (int i = 0; i < stops.size(); i++) {
            Node stop = stops.get(i);
            stop.requestFocus();
            WritableImage focused = picture(scene, stop, ground);
            stops.get((i + 1) % stops.size()).requestFocus();
            if (changed(focused, picture(scene, stop, ground)) < PIXELS_AT_LEAST) {
                unseen.add(ShownTexts.place(stop));
            }
        }
        return unseen;
    }

    private static WritableImage picture(Scene scene, Node node, SnapshotParameters ground) {
        layOut(scene);
        return node.snapshot(ground, null);
    }

    private static void layOut(Scene scene) {
        scene.getRoot().applyCss();
        scene.getRoot().layout();
    }

    private static int changed(WritableImage one, WritableImage other) {
        PixelReader before = one.getPixelReader();
        PixelReader after = other.getPixelReader();
        int changed = 0;
        for (int y = 0; y < Math.min(one.getHeight(), other.getHeight()); y++) {
            for (int x = 0; x < Math.min(one.getWidth(), other.getWidth()); x++) {
                boolean isSame = before.getArgb(x, y) == after.getArgb(x, y);
                if (!isSame && Contrast.between(before.getColor(x, y), after.getColor(x, y)) >= ENOUGH_FOR_A_SIGN) {
                    changed++;
                }
            }
        }
        return changed;
    }
}
