package org.moultwright.ui.theme;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.DatePicker;
import javafx.scene.control.MenuButton;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.Slider;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.moultwright.settings.TextSize;
import org.moultwright.settings.Theme;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** The marks by which the toolkit's controls say what they do, in both themes. */
@ExtendWith(ApplicationExtension.class)
class MarksUiTest {
    /** WCAG 2.1, success criterion 1.4.11: what is needed to know a control against what is beside it. */
    private static final double ENOUGH_FOR_A_MARK = 3;

    private static final List<Token> GROUNDS = List.of(Token.BG, Token.SURFACE);

    private static final Set<String> MARKS = Set.of("increment-arrow", "decrement-arrow", "arrow", "thumb", "mark");

    private Stage stage;

    @Start
    void start(Stage primary) {
        stage = primary;
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void standOutFromTheirGround(Theme theme, FxRobot robot) {
        robot.interact(() -> {
            Scene scene = new Scene(new VBox(controls()), 600, 600);
            new Appearance(theme, TextSize.NORMAL).dress(scene.getStylesheets());
            stage.setScene(scene);
            stage.show();
            scene.getRoot().applyCss();
            scene.getRoot().layout();
            List<Region> marks = nodes(scene.getRoot())
                    .filter(node -> node.getStyleClass().stream().anyMatch(MARKS::contains))
                    .map(Region.class::cast)
                    .toList();
            assertThat(marks.stream()
                            .flatMap(mark -> mark.getStyleClass().stream())
                            .collect(Collectors.toSet()))
                    .containsAll(MARKS);
            assertThat(marks).allSatisfy(mark -> standsOut(mark, new Palette(theme)));
        });
    }

    private static Node[] controls() {
        ScrollBar down = new ScrollBar();
        down.setOrientation(Orientation.VERTICAL);
        CheckBox ticked = new CheckBox();
        ticked.setSelected(true);
        TableView<String> table = new TableView<>();
        TableColumn<String, String> column = new TableColumn<>("sorted");
        table.getColumns().add(column);
        table.getSortOrder().add(column);
        return new Node[] {
            new ScrollBar(),
            down,
            ticked,
            new ChoiceBox<String>(),
            new ComboBox<String>(),
            new DatePicker(),
            new MenuButton("more"),
            new Slider(),
            table
        };
    }

    private static void standsOut(Region mark, Palette palette) {
        List<BackgroundFill> fills =
                Objects.requireNonNull(mark.getBackground(), mark::toString).getFills();
        Color colour = (Color) fills.get(fills.size() - 1).getFill();
        assertThat(GROUNDS)
                .allSatisfy(ground -> assertThat(Contrast.between(colour, palette.colour(ground)))
                        .as(
                                "%s of %s on %s",
                                mark.getStyleClass(), mark.getParent().getStyleClass(), ground)
                        .isGreaterThanOrEqualTo(ENOUGH_FOR_A_MARK));
    }

    private static Stream<Node> nodes(Node node) {
        return node instanceof Parent parent
                ? Stream.concat(
                        Stream.of(node),
                        parent.getChildrenUnmodifiable().stream().flatMap(MarksUiTest::nodes))
                : Stream.of(node);
    }
}
