package org.moultwright.ui.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.compute.plan.Safety;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.RoomView;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;

/** What to order by when, for the invented room on the third of May. */
@ExtendWith(ApplicationExtension.class)
class OrdersUiTest {
    private final ObjectProperty<RoomView> room = new SimpleObjectProperty<>(RoomFixture.room());
    private ForecastViewModel model;

    @Start
    void start(Stage stage) {
        Appearance appearance = new Appearance();
        model = OrdersPictures.model(room);
        model.partProperty().set(ForecastViewModel.Part.ORDERS);
        Scene scene = new Scene(new ForecastView(model, appearance.paletteProperty()), 1188, 752);
        appearance.dress(scene.getStylesheets());
        stage.setScene(scene);
        stage.show();
    }

    /** B1's first slings come not before 7 May in 9 of 10; those of C1 not before 23 May. */
    @Test
    void eachBroodHasItsDates() {
        List<OrdersViewModel.Line> lines = model.orders().lines();
        assertThat(lines).extracting(OrdersViewModel.Line::brood).containsExactly("CC-26-A", "CC-26-B", "CC-26-C");
        assertThat(lines.get(0).pots())
                .isEqualTo("Order 106 pots and labels today: the first slings are there already.");
        assertThat(lines.get(1).pots()).startsWith("Order 59 pots and labels today: there on 8 May, in time for");
        assertThat(lines.get(2).pots())
                .isEqualTo("Order 63 pots and labels by 17 May: there on 22 May, before the first slings in 9 of 10"
                        + " outcomes.");
        assertThat(lines.get(2).food())
                .isEqualTo("Order food for 63 by 26 May: there on 29 May, before the first meal in 9 of 10 outcomes.");
    }

    @Test
    void aLongerDeliveryIsTypedAndOrderedEarlier(FxRobot robot) {
        TextField days = field(robot, "pots and labels take, days");
        robot.interact(() -> {
            days.requestFocus();
            days.selectAll();
        });
        robot.write("10").type(KeyCode.ENTER);
        assertThat(model.orders().lines().get(2).pots()).contains("by 12 May: there on 22 May");
        assertThat(model.orders().plans().settings().potDays()).isEqualTo(10);
    }

    @Test
    void whatIsNoNumberOfDaysIsSaidAndTheFigureBeforeHolds(FxRobot robot) {
        TextField days = field(robot, "food takes, days");
        for (String wrong : List.of("soon", "-1", "400", "")) {
            robot.interact(() -> {
                days.requestFocus();
                days.setText(wrong);
            });
            robot.type(KeyCode.ENTER);
            assertThat(problems(robot)).singleElement().asString().startsWith("Write whole days from 0 to 365.");
            assertThat(model.orders().plans().settings().foodDays()).isEqualTo(3);
        }
    }

    @Test
    void whatIsWrongStaysSaidWhereItStandsWhileAnotherFieldIsWritten(FxRobot robot) {
        TextField pots = field(robot, "pots and labels take, days");
        TextField food = field(robot, "food takes, days");
        robot.interact(() -> {
            pots.requestFocus();
            pots.setText("-5");
            food.requestFocus();
            food.setText("4");
        });
        robot.type(KeyCode.ENTER);
        assertThat(model.orders().plans().settings().foodDays()).isEqualTo(4);
        assertThat(problems(robot)).hasSize(1);
        assertThat(pots.getText()).isEqualTo("-5");
        assertThat(pots.getAccessibleHelp()).startsWith("Write whole days");
        robot.interact(() -> {
            pots.requestFocus();
            pots.setText("6");
        });
        robot.type(KeyCode.ENTER);
        assertThat(problems(robot)).isEmpty();
        assertThat(model.orders().plans().settings().potDays()).isEqualTo(6);
    }

    private static List<String> problems(FxRobot robot) {
        return robot.lookup(".problem").<Label>queryAllAs(Label.class).stream()
                .filter(Node::isVisible)
                .map(Label::getText)
                .filter(words -> !words.isEmpty())
                .toList();
    }

    @Test
    void saferIsEarlierAndThePotsCardFollows(FxRobot robot) {
        robot.interact(() -> model.orders().plans().safetyProperty().set(Safety.NINETY_FIVE));
        assertThat(model.orders().lines().get(2).pots()).endsWith("in 19 of 20 outcomes.");
        assertThat(model.pots().safetyProperty().get()).isEqualTo(Safety.NINETY_FIVE);
    }

    @Test
    void whereTooLittleIsKnownNothingIsOrdered(FxRobot robot) {
        robot.interact(() -> room.set(RoomFixture.room(List.of(RoomFixture.fresh()))));
        assertThat(model.orders().lines()).isEmpty();
        assertThat(model.orders().nothingProperty().get()).startsWith("Nothing to order yet.");
    }

    @Test
    void itIsPictured() {
        ScreenShots.of("forecast-orders", 1188, 752, look -> OrdersPictures.of(RoomFixture.room(), look));
    }

    private static TextField field(FxRobot robot, String name) {
        return robot.lookup((Node node) -> node instanceof TextField && name.equals(node.getAccessibleText()))
                .query();
    }
}
