package org.moultwright.ui.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.moultwright.domain.Stage.INSTAR1;
import static org.moultwright.domain.Stage.INSTAR2;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
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
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.Milestone;
import org.moultwright.compute.scoring.Outcome;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.PreparedRoom;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.ScreenShots;
import org.moultwright.ui.UnopenedSac;
import org.moultwright.ui.chart.CalendarStrip;
import org.moultwright.ui.chart.Lane;
import org.moultwright.ui.chart.LaneChart;
import org.moultwright.ui.plan.ChosenPlans;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.PreparedForecasts;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.ScoreForecasts;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

@ExtendWith(ApplicationExtension.class)
class ForecastUiTest {
    private final ObjectProperty<RoomView> room = new SimpleObjectProperty<>(RoomFixture.room());
    private final PreparedForecasts prepared = new PreparedRoom().prepared();
    private List<ScoreForecasts.Scored> scores = List.of();
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

    /** Else the row would be empty, as if nothing had been. */
    @Test
    void whatHasBegunOnADayNobodyWroteDownIsToldWithoutOne(FxRobot robot) {
        robot.interact(() -> room.set(RoomFixture.room(List.of(RoomFixture.broodBUnseen()))));
        Lane lane = model.lanes().get(0).lane();
        assertThat(lane.windows()).extracting(Lane.Window::row).doesNotContain(Lane.Row.FIRST);
        assertThat(lane.begun().orElseThrow().words()).isEqualTo("slings there, day not known");
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
    void whatIsAsGoodAsNeverDoesNotStretchTheCalendarOfOthers(FxRobot robot) {
        robot.interact(() -> room.set(RoomFixture.room(List.of(RoomFixture.broodC(), RoomFixture.cold()))));
        assertThat(model.lanes().get(1).phrase()).isEqualTo("half are slings in more than a year, if at all");
        assertThat(model.lanes().get(1).lane().windows()).isEmpty();
        assertThat(model.calendarProperty().get().orElseThrow().to())
                .isBefore(RoomFixture.NOW.plus(Duration.ofDays(40)));
    }

    /** By belief alone: half have legs about 24 warm-days after laying, 27 to 41 days at 26 °C and less than that at 27. */
    @Test
    void aSacNobodyOpenedHasALaneOfItsOwn(FxRobot robot) {
        robot.interact(() -> room.set(UnopenedSac.room()));
        LaneLine sac = model.lanes().get(model.lanes().size() - 1);
        assertThat(sac.sentence()).startsWith("Sac of GP-26-A: 21 days, ").contains("warm-days old, pull ");
        assertThat(sac.lane().windows()).hasSize(3 * 2).noneMatch(Lane.Window::isPast);
        assertThat(sac.windows()).extracting(LaneLine.Windows::into).endsWith(INSTAR2);
        assertThat(model.toDo())
                .anyMatch(words -> words.startsWith("Sac of GP-26-A: pull ")
                        && words.endsWith("common practice, no source. Nobody has looked inside."));
        assertThat(model.broods().yields())
                .filteredOn(line -> line.brood().equals("GP-26-A"))
                .singleElement()
                .satisfies(line -> assertThat(line.count()).isEqualTo("unknown"));
        assertThat(model.broods().notes()).anyMatch(words -> words.startsWith("GP-26-A: Nobody has opened the sac"));
        robot.interact(() -> room.set(RoomFixture.room(List.of(UnopenedSac.view()))));
        assertThat(model.lanes()).hasSize(1);
    }

    /** Ten happenings, each a day after the middle of a window of 4 days either way, and told of twice. */
    @Test
    void howGoodTheDatesWereIsToldByTheKeyboard(FxRobot robot) {
        scores = List.of(scored(INSTAR1, Milestone.FIRST, 3), scored(INSTAR2, Milestone.HALF, 10));
        robot.press(KeyCode.CONTROL).type(KeyCode.G).release(KeyCode.CONTROL);
        AccuracyViewModel accuracy = model.accuracyProperty().get().orElseThrow();
        assertThat(accuracy.lines())
                .extracting(ScoreLine::cells)
                .containsExactly(
                        List.of("first nymphs", "3", "6", "1.0", "1.0 early", "0.9", "100 %"),
                        List.of("half are slings", "10", "20", "1.0", "1.0 early", "0.9", "100 %"));
        assertThat(accuracy.toldProperty().get())
                .startsWith("Too few to judge by: first nymphs. What happened in fewer than 10 trays");
        assertThat(accuracy.chosenProperty().get().orElseThrow().event()).isEqualTo("half are slings");
        assertThat(accuracy.chosenProperty().get().orElseThrow().tenths().counts())
                .containsExactly(0, 0, 0, 0, 0, 0, 20, 0, 0, 0);
        robot.type(KeyCode.UP);
        assertThat(accuracy.chosenProperty().get().orElseThrow().event()).isEqualTo("first nymphs");
        robot.type(KeyCode.ESCAPE);
        assertThat(model.accuracyProperty().get()).isEmpty();
    }

    @Test
    void nothingScoredYetTeaches(FxRobot robot) {
        robot.interact(model::openAccuracy);
        assertThat(model.accuracyProperty().get().orElseThrow().toldProperty().get())
                .startsWith("No date can be judged yet. Every forecast is kept");
    }

    private static ScoreForecasts.Scored scored(org.moultwright.domain.Stage into, Milestone milestone, int events) {
        List<Outcome> outcomes = new ArrayList<>();
        for (int event = 0; event < events; event++) {
            Instant middle = RoomFixture.NOW.plus(Duration.ofDays(event));
            InstantInterval window =
                    new InstantInterval(middle.minus(Duration.ofDays(4)), middle, middle.plus(Duration.ofDays(4)));
            for (int evening = 5; evening <= 6; evening++) {
                outcomes.add(
                        new Outcome(middle.minus(Duration.ofDays(evening)), window, middle.plus(Duration.ofDays(1))));
            }
        }
        return new ScoreForecasts.Scored(into, milestone, outcomes);
    }

    /** The same with truths from two days early to two and a half late, as they might be. */
    private static ScoreForecasts.Scored scattered(org.moultwright.domain.Stage into, Milestone milestone, int events) {
        List<Outcome> outcomes = new ArrayList<>();
        for (Outcome outcome : scored(into, milestone, events).outcomes()) {
            long hours = outcomes.size() / 2 * 37 % 108 - 48L;
            outcomes.add(new Outcome(
                    outcome.madeAt(),
                    new InstantInterval(
                            outcome.forecast().p50().minus(Duration.ofHours(54)),
                            outcome.forecast().p50(),
                            outcome.forecast().p50().plus(Duration.ofHours(54))),
                    outcome.forecast().p50().plus(Duration.ofHours(hours))));
        }
        return new ScoreForecasts.Scored(into, milestone, outcomes);
    }

    @Test
    void everyStateIsPictured(FxRobot robot) {
        ScreenShots.of("forecast", 1188, 752, look -> pictured(look, true));
        ScreenShots.of("forecast-large", 1828, 1032, look -> pictured(look, true));
        ScreenShots.of("forecast-what-if", 1188, 752, look -> tried(look, ForecastViewModel.Part.AHEAD));
        ScreenShots.of("forecast-what-if-words", 1188, 752, look -> tried(look, ForecastViewModel.Part.WORDS));
        ScreenShots.of("forecast-what-if-large", 1828, 1032, look -> tried(look, ForecastViewModel.Part.AHEAD));
        ScreenShots.of("forecast-accuracy-none", 1188, 752, this::accuracy);
        scores = List.of(
                scored(INSTAR1, Milestone.FIRST, 3),
                scattered(INSTAR1, Milestone.HALF, 11),
                scattered(INSTAR2, Milestone.FIRST, 24),
                scattered(INSTAR2, Milestone.HALF, 30));
        ScreenShots.of("forecast-accuracy", 1188, 752, this::accuracy);
        ScreenShots.of("forecast-accuracy-large", 1828, 1032, this::accuracy);
        robot.interact(() -> room.set(UnopenedSac.room()));
        ScreenShots.of("forecast-sac", 1188, 752, look -> {
            ForecastViewModel shown = model();
            shown.chosenProperty()
                    .set(Optional.of(shown.lanes().get(shown.lanes().size() - 1)));
            shown.partProperty().set(ForecastViewModel.Part.WORDS);
            return new ForecastView(shown, look.paletteProperty());
        });
        robot.interact(() -> room.set(RoomFixture.crowded(60)));
        ScreenShots.of("forecast-many", 1188, 752, look -> pictured(look, false));
        robot.interact(() -> room.set(RoomView.EMPTY));
        ScreenShots.of("forecast-empty", 1188, 752, look -> pictured(look, false));
    }

    private ForecastView accuracy(Appearance look) {
        ForecastViewModel shown = model();
        ForecastView view = new ForecastView(shown, look.paletteProperty());
        shown.openAccuracy();
        return view;
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
                () -> scores,
                new DayWords(RoomFixture.ZONE),
                new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY),
                ChosenPlans.usual()));
    }
}
