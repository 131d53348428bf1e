package org.moultwright.ui.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.HandsEvent;
import org.moultwright.compute.forecast.JointChance;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.plan.Safety;
import org.moultwright.domain.Stage;
import org.moultwright.task.InlineRunner;
import org.moultwright.task.Job;
import org.moultwright.task.Outcome;
import org.moultwright.task.Runner;
import org.moultwright.task.Work;
import org.moultwright.text.ChanceWords;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.PreparedRoom;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.chart.Lane;
import org.moultwright.ui.plan.ChosenPlans;
import org.moultwright.ui.plan.PlanChoices;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;

/** Planning with the forecasts the program makes of the invented room: another set-point, days away, pots. */
class PlanViewModelTest {
    private final PreparedRoom fixture = new PreparedRoom();
    private final ObjectProperty<RoomView> room = new SimpleObjectProperty<>(fixture.room());
    private final PlanChoices plans = ChosenPlans.usual();
    private final ForecastViewModel model = new ForecastViewModel(desk(new InlineRunner()));

    private ForecastDesk desk(Runner aside) {
        return new ForecastDesk(
                room,
                fixture.prepared()::of,
                aside,
                List::of,
                new DayWords(RoomFixture.ZONE),
                new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY),
                plans);
    }

    @Test
    void aWarmerPlaceBringsEveryLaneForwardAndBackIsAsItWas() {
        List<LaneLine> asItWas = List.copyOf(model.lanes());
        String subtitle = model.subtitleProperty().get();
        set(29.5);
        for (int tray = 0; tray < asItWas.size(); tray++) {
            assertThat(middle(model.lanes().get(tray))).isBefore(middle(asItWas.get(tray)));
            assertThat(model.lanes().get(tray).asItIs())
                    .contains(asItWas.get(tray).lane());
        }
        assertThat(model.subtitleProperty().get()).startsWith("What if: 29.5 °C from now on.");
        model.whatIf().backToAsItIs();
        assertThat(model.lanes()).isEqualTo(asItWas);
        assertThat(model.subtitleProperty().get()).isEqualTo(subtitle);
        assertThat(model.whatIf().celsiusProperty().get()).isEqualTo(28.3, within(1e-9));
    }

    @Test
    void whatHasBeenIsToldWithItsDay() {
        assertThat(model.lanes().stream()
                        .filter(line -> line.tray().equals("A1"))
                        .flatMap(line -> line.lane().windows().stream())
                        .filter(window -> window.isPast() && window.row() == Lane.Row.FIRST)
                        .map(Lane.Window::since))
                .contains("slings since 3 May");
    }

    @Test
    void theSetPointInForceChangesNothing() {
        List<Lane> asItWas = model.lanes().stream().map(LaneLine::lane).toList();
        set(28.4);
        set(28.3);
        assertThat(model.lanes()).extracting(LaneLine::lane).isEqualTo(asItWas);
        assertThat(model.changeProperty().get()).contains("would be slings on about the same day");
    }

    /** The display of the invented room stands at 28.3 °C. */
    @Test
    void theSentenceSaysHowMuchLater() {
        choose("B1");
        set(25.5);
        assertThat(model.changeProperty().get())
                .startsWith("At 25.5 °C half of B1 would be slings ")
                .contains(" days later, ");
        assertThat(model.chosenProperty().get().orElseThrow().sentence()).startsWith("At 25.5 °C, B1: ");
    }

    @Test
    void theTableGoesFromCoolAndLateToWarmAndEarly() {
        choose("C1");
        assertThat(model.tableTitle()).isEqualTo("C1: half are slings");
        assertThat(model.table().rows())
                .extracting(SetPointTable.Row::celsius)
                .containsExactly("25 °C", "26 °C", "27 °C", "28 °C");
        assertThat(model.table().rows()).extracting(SetPointTable.Row::days).doesNotHaveDuplicates();
    }

    @Test
    void aTryStaysOnWhenTheRoomIsReadAgain() {
        set(25);
        room.set(RoomFixture.room(fixture.room().broods().subList(0, 2)));
        assertThat(model.lanes())
                .hasSize(3)
                .allSatisfy(line -> assertThat(line.asItIs()).isPresent());
    }

    @Test
    void nothingKnownIsNothingMoved() {
        room.set(RoomFixture.room(List.of(RoomFixture.fresh())));
        set(25);
        assertThat(model.table().rows()).isEmpty();
        assertThat(model.tableTitle()).isEqualTo("D1: too early to say when half are slings.");
        assertThat(model.changeProperty().get()).contains("too little is known of D1");
        assertThat(model.pots().sentenceProperty().get())
                .isEqualTo("No pots are needed as far as the forecast sees. Of D1 it is too early to say.");
    }

    /** Figures of the invented forecasts: B1's first slings come between 7 and 9 May, uniformly but for the ends. */
    @Test
    void anAbsenceIsSaidInChances() {
        room.set(RoomFixture.room());
        away(LocalDate.of(2026, 5, 8), LocalDate.of(2026, 5, 14));
        AwayChances chances = AwayChances.of(
                Foreseen.in(room.get(), brood -> brood.forecast()).get(2),
                model.away().absenceProperty().get().orElseThrow());
        assertThat(chances.tray()).isEqualTo("B1");
        assertThat(chances.moults()).extracting(AwayChances.Moult::into).containsExactly(Stage.INSTAR2);
        assertThat(chances.moults().get(0).first()).isEqualTo(0.5 + 0.4 * 20.7 / 24, within(0.02));
        assertThat(chances.separation().orElseThrow().beforeReturn()).isEqualTo(0.5 - 0.4 * 20.7 / 24, within(0.02));
        assertThat(chances.separation().orElseThrow().beforeLeaving()).isZero();
    }

    @Test
    void whatMattersMostIsTheSentence() {
        room.set(RoomFixture.room());
        away(LocalDate.of(2026, 5, 8), LocalDate.of(2026, 5, 20));
        assertThat(model.away().titleProperty().get()).isEqualTo("Away 8 to 20 May");
        assertThat(model.away().lines())
                .extracting(AwayLine::sentence)
                .contains("Four in five that B1's first slings come while you are away.")
                .contains("Little is likely to happen in C1 while you are away.");
        assertThat(model.away().lines())
                .extracting(AwayLine::needsHands)
                .isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    /** At least as likely as the likeliest tray, at most as if no tray told of another; what is seen is likelier still. */
    @Test
    void allTraysTogetherHaveOneChance() {
        away(LocalDate.of(2026, 5, 13), LocalDate.of(2026, 5, 15));
        List<BroodForecast> broods = room.get().broods().stream()
                .map(brood -> brood.forecast().orElseThrow())
                .toList();
        Lane.Absence away = model.away().absenceProperty().get().orElseThrow();
        JointChance hands = JointChance.ofAny(broods, Set.of(HandsEvent.SEPARATION), away.from(), away.to())
                .orElseThrow();
        double likeliest = model.away().lines().stream()
                .mapToDouble(AwayLine::needsHands)
                .max()
                .orElseThrow();
        double none = model.away().lines().stream()
                .mapToDouble(line -> 1 - line.needsHands())
                .reduce(1, (a, b) -> a * b);
        assertThat(hands.probability()).isBetween(likeliest - 0.01, 1 - none + 0.01);
        assertThat(model.away().sentenceProperty().get())
                .contains("that a tray needs hands while you are away: " + ChanceWords.percent(hands.probability())
                        + ", give or take ");
        JointChance anything = JointChance.ofAny(broods, HandsEvent.ALL, away.from(), away.to())
                .orElseThrow();
        assertThat(anything.probability()).isGreaterThanOrEqualTo(hands.probability());
        assertThat(model.away().anythingProperty().get()).contains(ChanceWords.percent(anything.probability()));
    }

    @Test
    void tooLittleKnownIsNoChanceAtAll() {
        room.set(RoomFixture.room(List.of(RoomFixture.fresh())));
        away(LocalDate.of(2026, 5, 8), LocalDate.of(2026, 5, 20));
        assertThat(model.away().sentenceProperty().get()).isEqualTo("Too early to say what falls on those days.");
        assertThat(model.away().anythingProperty().get()).isEmpty();
    }

    /** The same forecasts read on the evening half of C1 are over, and on the one all of it is. */
    @Test
    void whatIsOverIsSaidToBeOverAndNotTooEarly() {
        MoultForecast last = fixture.room().broods().stream()
                .flatMap(brood -> brood.forecast().stream())
                .flatMap(forecast -> forecast.tray("C1").stream())
                .flatMap(tray -> tray.moult(Stage.INSTAR2).stream())
                .findFirst()
                .orElseThrow();
        readOn(last.half().p90());
        assertThat(model.tableTitle()).isEqualTo("C1: half are slings already; 95 % are");
        assertThat(model.table().rows())
                .extracting(SetPointTable.Row::days)
                .hasSize(4)
                .doesNotHaveDuplicates();
        set(25);
        assertThat(model.changeProperty().get()).startsWith("At 25.0 °C 95 % of C1 would be slings ");
        readOn(last.most().p90());
        assertThat(model.tableTitle())
                .startsWith("C1: 95 % were slings by ")
                .endsWith(". No temperature changes that.");
        assertThat(model.table().rows()).isEmpty();
        assertThat(model.table().insteadProperty().get()).isEmpty();
        assertThat(model.changeProperty().get()).isEqualTo("95 % of C1 are slings already, whatever the temperature.");
    }

    private void readOn(Instant evening) {
        RoomView read = fixture.room();
        room.set(new RoomView(evening, read.broods(), read.latestReadings(), read.lastDeed()));
        choose("C1");
    }

    @Test
    void datesStillBeingWorkedOutAreNotCalledTooEarly() {
        HeldRunner aside = new HeldRunner();
        SetPointTable table = new SetPointTable(desk(aside));
        table.choose(Foreseen.in(room.get(), BroodView::forecast).stream().findFirst());
        assertThat(table.insteadProperty().get()).isEqualTo("The dates are being worked out.");
        aside.release();
        assertThat(table.rows()).hasSize(4);
        assertThat(table.insteadProperty().get()).isEmpty();
    }

    @Test
    void anAbsenceMovesWithTheSetPoint() {
        away(LocalDate.of(2026, 5, 8), LocalDate.of(2026, 5, 20));
        double before = handsOf("B1");
        set(22);
        assertThat(handsOf("B1")).isLessThan(before);
    }

    @Test
    void daysThatEndBeforeTheyBeginAreSaid() {
        assertThat(model.away().sentenceProperty().get()).startsWith("Write the days you will be away");
        away(LocalDate.of(2026, 5, 20), LocalDate.of(2026, 5, 8));
        assertThat(model.away().absenceProperty().get()).isEmpty();
        assertThat(model.away().sentenceProperty().get()).startsWith("The last day away is before the first.");
    }

    @Test
    void moreSafetyIsMorePotsAndNeverMoreThanAnimals() {
        int animals = room.get().occupiedTrays().stream()
                .mapToInt(tray -> tray.alive())
                .sum();
        int before = 0;
        for (Safety safety : Safety.values()) {
            model.pots().safetyProperty().set(safety);
            List<PotNeeds.Need> needs = model.pots().needs();
            assertThat(needs).extracting(PotNeeds.Need::pots).isSorted();
            assertThat(needs).allSatisfy(need -> assertThat(need.more()).isPositive());
            int inAWeek = needs.stream()
                    .filter(need -> need.day().isBefore(LocalDate.of(2026, 5, 11)))
                    .mapToInt(PotNeeds.Need::pots)
                    .max()
                    .orElseThrow();
            assertThat(inAWeek).isGreaterThanOrEqualTo(before).isLessThanOrEqualTo(animals);
            before = inAWeek;
        }
        assertThat(model.pots().sentenceProperty().get())
                .matches("\\d+ pots in all by \\d+ \\w+, \\d+ of them within a week\\.");
    }

    @Test
    void whatTaughtTheTimingIsSaid() {
        assertThat(model.subtitleProperty().get()).endsWith("· no completed brood to learn from yet");
        assertThat(model.broods().learned())
                .containsExactly(
                        "CC-26-A, CC-26-B and CC-26-C: the general timing, an assumption; no completed brood of"
                                + " the species to learn from yet.");
    }

    private double handsOf(String tray) {
        return model.away().lines().stream()
                .filter(line -> line.sentence().contains(tray))
                .mapToDouble(AwayLine::needsHands)
                .findFirst()
                .orElseThrow();
    }

    private void set(double celsius) {
        model.whatIf().celsiusProperty().set(celsius);
    }

    private void away(LocalDate from, LocalDate to) {
        model.away().fromProperty().set(from);
        model.away().toProperty().set(to);
    }

    private void choose(String tray) {
        model.chosenProperty()
                .set(model.lanes().stream()
                        .filter(line -> line.tray().equals(tray))
                        .findFirst());
    }

    private static Instant middle(LaneLine line) {
        return line.lane().windows().get(line.lane().windows().size() - 1).middle();
    }

    /** Begins its work only when it is let go. */
    private static final class HeldRunner implements Runner {
        private final Runner inline = new InlineRunner();
        private final List<Runnable> held = new ArrayList<>();

        @Override
        public <T> Job run(Work<T> work, Watcher watcher, Consumer<Outcome<T>> whenEnded) {
            held.add(() -> inline.run(work, watcher, whenEnded));
            return () -> {};
        }

        private void release() {
            List.copyOf(held).forEach(Runnable::run);
        }
    }
}
