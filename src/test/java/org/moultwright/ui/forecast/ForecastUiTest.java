package org.moultwright.ui.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.moultwright.domain.Stage.INSTAR2;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.PreparedRoom;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.chart.CalendarStrip;
import org.moultwright.ui.chart.Lane;
import org.moultwright.ui.chart.LaneChart;
import org.moultwright.ui.plan.ChosenPlans;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.PreparedForecasts;
import org.moultwright.workflow.RoomView;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class ForecastUiTest {
    private final ObjectProperty<RoomView> room = new SimpleObjectProperty<>(RoomFixture.room());
    private final PreparedForecasts prepared = new PreparedRoom().prepared();
    private ForecastViewModel model;

    @Start
    void start(Stage stage) {
        Appearance appearance = new Appearance();
        model = model();
        ForecastView view = new ForecastView(model, appearance.paletteProperty());
        Scene scene = new Scene(view, 1188, 752);
        appearance.dress(scene.getStylesheets());
        stage.setScene(scene);
        stage.show();
        view.takeFocus();
    }

    @Test
    void arrowKeysChooseATray(FxRobot robot) {
        robot.type(KeyCode.DOWN, KeyCode.DOWN);
        assertThat(model.chosenProperty().get().orElseThrow().sentence())
                .isEqualTo("B1: half are slings between 9 and 13 May.");
    }

    @Test
    void windowsAreSaidInWords() {
        LaneLine tray = model.lanes().get(3);
        assertThat(tray.windows().get(1).lines())
                .containsExactly(
                        "first slings: 23 to 25 May",
                        "half are slings: 25 to 29 May",
                        "95 % are slings: 28 May to 2 June");
        assertThat(model.toDo()).anyMatch(words -> words.startsWith("B1: first slings 7 to 9 May. Separate"));
    }

    /** A1 was seen with slings on the third of May, by its look. */
    @Test
    void whatHasBegunIsNotForetold() {
        LaneLine tray = model.lanes().get(0);
        assertThat(tray.windows().get(1).lines()).first().isEqualTo("first slings: there already");
        assertThat(tray.lane().windows())
                .filteredOn(window -> window.row() == Lane.Row.FIRST && window.into() == INSTAR2)
                .singleElement()
                .satisfies(window -> assertThat(window.middle()).isEqualTo(RoomFixture.evening("2026-05-03")));
        assertThat(model.toDo()).contains("A1: first slings are there. Separate within about a week of them.");
    }

    @Test
    void theCalendarStandsOverTheChartsBesideAScrollBarToo(FxRobot robot) {
        assertThat(edges(robot, CalendarStrip.class)).isEqualTo(edges(robot, LaneChart.class));
        robot.interact(() -> room.set(RoomFixture.crowded(60)));
        assertThat(edges(robot, CalendarStrip.class)).isEqualTo(edges(robot, LaneChart.class));
    }

    private static List<Double> edges(FxRobot robot, Class<? extends Node> part) {
        WaitForAsyncUtils.waitForFxEvents();
        Node node = robot.lookup((Node found) -> part.isInstance(found)).query();
        Bounds bounds = node.localToScene(node.getLayoutBounds());
        return List.of(bounds.getMinX(), bounds.getMaxX());
    }

    @Test
    void anAbsenceNamesTheTraysThatNeedHands(FxRobot robot) {
        robot.interact(() -> {
            model.away().fromProperty().set(LocalDate.of(2026, 5, 8));
            model.away().toProperty().set(LocalDate.of(2026, 5, 15));
        });
        assertThat(model.toDo())
                .startsWith("A1 may need hands from 9 May, while you are away. Ask a sitter, or pot early.")
                .contains("B1 may need hands from 14 May, while you are away. Ask a sitter, or pot early.");
        assertThat(model.away().absenceProperty().get().orElseThrow().words()).isEqualTo("away 8 to 15 May");
    }

    @Test
    void tooEarlyIsSaidAndNotGuessed(FxRobot robot) {
        robot.interact(() -> room.set(RoomFixture.room(List.of(RoomFixture.fresh()))));
        assertThat(model.lanes().get(0).sentence()).startsWith("D1: Too early to say");
        assertThat(model.broods().yields().get(0).count()).isEqualTo("too early to say");
    }

    @Test
    void everyStateIsPictured(FxRobot robot) {
        ScreenShots.of("forecast", 1188, 752, look -> pictured(look, true));
        ScreenShots.of("forecast-large", 1828, 1032, look -> pictured(look, true));
        ScreenShots.of("forecast-what-if", 1188, 752, look -> tried(look, ForecastViewModel.Part.AHEAD));
        ScreenShots.of("forecast-what-if-words", 1188, 752, look -> tried(look, ForecastViewModel.Part.WORDS));
        ScreenShots.of("forecast-what-if-large", 1828, 1032, look -> tried(look, ForecastViewModel.Part.AHEAD));
        robot.interact(() -> room.set(RoomFixture.crowded(60)));
        ScreenShots.of("forecast-many", 1188, 752, look -> pictured(look, false));
        robot.interact(() -> room.set(RoomView.EMPTY));
        ScreenShots.of("forecast-empty", 1188, 752, look -> pictured(look, false));
    }

    private ForecastView tried(Appearance look, ForecastViewModel.Part part) {
        ForecastViewModel shown = model();
        ForecastView view = new ForecastView(shown, look.paletteProperty());
        shown.partProperty().set(part);
        shown.chosenProperty().set(Optional.of(shown.lanes().get(2)));
        shown.whatIf().celsiusProperty().set(26.5);
        return view;
    }

    private ForecastView pictured(Appearance look, boolean withAbsence) {
        ForecastViewModel shown = model();
        if (withAbsence) {
            shown.away().fromProperty().set(LocalDate.of(2026, 5, 9));
            shown.away().toProperty().set(LocalDate.of(2026, 5, 16));
        }
        return new ForecastView(shown, look.paletteProperty());
    }

    private ForecastViewModel model() {
        return new ForecastViewModel(new ForecastDesk(
                room,
                prepared::of,
                new InlineRunner(),
                new DayWords(RoomFixture.ZONE),
                new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY),
                ChosenPlans.usual()));
    }
}
