package org.moultwright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Text;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.moultwright.settings.Theme;
import org.moultwright.ui.round.RoundPictures;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.ui.theme.Contrast;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;

/** What holds of every view, in both themes. A new view is one more line in {@link #views()}. */
@ExtendWith(ApplicationExtension.class)
class EveryViewTest {
    /** WCAG 2.1, success criterion 1.4.3. */
    private static final double ENOUGH_FOR_TEXT = 4.5;

    static Stream<Arguments> views() {
        return Stream.of(
                view("round, counting", RoundPictures::counting),
                view("round, mould and dead", RoundPictures::mouldAndDead),
                view("round, a question", RoundPictures::unbalanced),
                view("round, asking why", RoundPictures::asking),
                view("round, empty", RoundPictures::empty),
                view("settings", RoundPictures::settings));
    }

    private static Arguments view(String name, Supplier<Parent> view) {
        return Arguments.of(name, view);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("views")
    void everyControlTheKeyboardReachesHasAName(String name, Supplier<Parent> view, FxRobot robot) {
        robot.interact(() -> assertThat(nodes(dressed(view, Theme.LIGHT)))
                .filteredOn(Node::isFocusTraversable)
                .filteredOn(node -> !(node instanceof ScrollPane))
                .allSatisfy(
                        node -> assertThat(nameOf(node)).as("name of %s", node).isNotBlank()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("views")
    void everyWordStandsOutFromItsGround(String name, Supplier<Parent> view, FxRobot robot) {
        robot.interact(() -> Stream.of(Theme.values())
                .forEach(theme -> assertThat(nodes(dressed(view, theme)))
                        .filteredOn(node -> node instanceof Text text && isSeen(text))
                        .isNotEmpty()
                        .allSatisfy(node -> standsOut((Text) node, theme))));
    }

    private static void standsOut(Text text, Theme theme) {
        assertThat(Contrast.between((Color) text.getFill(), ground(text)))
                .as("'%s' in %s", text.getText(), theme)
                .isGreaterThanOrEqualTo(ENOUGH_FOR_TEXT);
    }

    private static Parent dressed(Supplier<Parent> view, Theme theme) {
        Appearance appearance = new Appearance();
        appearance.themeProperty().set(theme);
        Scene scene = new Scene(view.get(), 1280, 800);
        appearance.dress(scene.getStylesheets());
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        return scene.getRoot();
    }

    private static String nameOf(Node node) {
        if (node.getAccessibleText() != null) {
            return node.getAccessibleText();
        }
        return node instanceof Labeled labeled && labeled.getText() != null ? labeled.getText() : "";
    }

    private static List<Node> nodes(Parent root) {
        List<Node> all = new ArrayList<>(List.of(root));
        root.getChildrenUnmodifiable().forEach(child -> {
            if (child instanceof Parent parent) {
                all.addAll(nodes(parent));
            } else {
                all.add(child);
            }
        });
        return all;
    }

    private static boolean isSeen(Text text) {
        for (Node node = text; node != null; node = node.getParent()) {
            if (!node.isVisible() || node.getOpacity() == 0) {
                return false;
            }
        }
        return !text.getText().isBlank();
    }

    /** The uppermost opaque fill behind a node. */
    private static Color ground(Node node) {
        for (Node behind = node.getParent(); behind != null; behind = behind.getParent()) {
            Background background = behind instanceof Region region ? region.getBackground() : null;
            if (background != null && !background.getFills().isEmpty()) {
                List<BackgroundFill> fills = background.getFills();
                if (fills.get(fills.size() - 1).getFill() instanceof Color colour && colour.isOpaque()) {
                    return colour;
                }
            }
        }
        throw new AssertionError("nothing opaque lies behind " + node);
    }
}
