package org.moultwright.ui.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.language.Texts;
import org.moultwright.task.Once;
import org.moultwright.text.ForecastWords;
import org.moultwright.text.LearnedWords;
import org.moultwright.text.SacWords;
import org.moultwright.ui.chart.Calendar;
import org.moultwright.ui.chart.LaneChart;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;

/** The trays' forecasts, as things are or as a what-if has them, and the tray chosen among them. */
final class ForecastViewModel {
    private final ForecastDesk desk;
    private final WhatIfViewModel whatIf;
    private final SetPointTable table;
    private final AwayViewModel away;
    private final PotsViewModel pots;
    private final Once<OrdersViewModel> orders;
    private final BroodLines broods = new BroodLines();
    private final ObservableList<LaneLine> lanes = FXCollections.observableArrayList();
    private final ObservableList<String> toDo = FXCollections.observableArrayList();
    private final ObjectProperty<Optional<LaneLine>> chosen = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Part> part = new SimpleObjectProperty<>(Part.AHEAD);
    private final ReadOnlyObjectWrapper<Optional<Calendar>> calendar = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<AccuracyViewModel>> accuracy =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper change = new ReadOnlyStringWrapper("");
    private List<Foreseen> asItIs = List.of();
    private List<Foreseen> shown = List.of();
    private Optional<LaneLine> placed = Optional.empty();
    private boolean isReading;

    ForecastViewModel(ForecastDesk desk) {
        this.desk = desk;
        this.whatIf = new WhatIfViewModel(desk);
        this.table = new SetPointTable(desk);
        this.away = new AwayViewModel(desk.days());
        this.pots = new PotsViewModel(desk.days());
        this.orders = new Once<>(this::newOrders);
        away.fromProperty().bindBidirectional(desk.plans().awayFromProperty());
        away.toProperty().bindBidirectional(desk.plans().awayToProperty());
        pots.safetyProperty().bindBidirectional(desk.plans().safetyProperty());
        desk.room().addListener((observed, before, now) -> {
            placed = Optional.empty();
            read();
            whatIf.roomChanged();
        });
        desk.vocabulary().addListener((observed, before, now) -> read());
        away.fromProperty().addListener((observed, before, now) -> read());
        away.toProperty().addListener((observed, before, now) -> read());
        whatIf.answerProperty().addListener((observed, before, now) -> read());
        chosen.addListener((observed, before, now) -> choose());
        read();
    }

    WhatIfViewModel whatIf() {
        return whatIf;
    }

    SetPointTable table() {
        return table;
    }

    AwayViewModel away() {
        return away;
    }

    PotsViewModel pots() {
        return pots;
    }

    OrdersViewModel orders() {
        return orders.get();
    }

    ObservableList<LaneLine> lanes() {
        return lanes;
    }

    /** Yields, what taught the timing, and what must be known of each brood. */
    BroodLines broods() {
        return broods;
    }

    /** What the forecast asks of the keeper, in sentences. */
    ObservableList<String> toDo() {
        return toDo;
    }

    ObjectProperty<Optional<LaneLine>> chosenProperty() {
        return chosen;
    }

    /** What stands beneath the lanes. */
    ObjectProperty<Part> partProperty() {
        return part;
    }

    ReadOnlyObjectProperty<Optional<Calendar>> calendarProperty() {
        return calendar.getReadOnlyProperty();
    }

    /** How good past dates were, while that is open. */
    ReadOnlyObjectProperty<Optional<AccuracyViewModel>> accuracyProperty() {
        return accuracy.getReadOnlyProperty();
    }

    void openAccuracy() {
        accuracy.set(Optional.of(new AccuracyViewModel(desk, () -> accuracy.set(Optional.empty()))));
    }

    ReadOnlyStringProperty subtitleProperty() {
        return subtitle.getReadOnlyProperty();
    }

    /** What the set-point tried on would change for the tray chosen. */
    ReadOnlyStringProperty changeProperty() {
        return change.getReadOnlyProperty();
    }

    /** "A1: half are slings", over the dates under other set-points; or that it is over, or too early to say. */
    String tableTitle() {
        return ofChosen(asItIs)
                .map(tray -> whatIfWords().title(tray, room().now()))
                .orElse("");
    }

    String nowWord() {
        return Texts.say("tonight, {0}", desk.days().shortDay(room().now()));
    }

    /** A lane on the calendar all share. */
    Optional<LaneChart.Shown> shown(LaneLine line) {
        return calendar.get()
                .map(shared -> new LaneChart.Shown(
                        line.lane(), shared, away.absenceProperty().get(), line.asItIs()));
    }

    private void read() {
        isReading = true;
        RoomView room = room();
        ForecastWords words = words();
        asItIs = Foreseen.in(room, BroodView::forecast);
        shown = Foreseen.in(room, this::forecast);
        LaneLines lines = new LaneLines(desk.vocabulary().get(), desk.days());
        List<LaneLine> asThingsAre = lines.of(room);
        List<LaneLine> read = whatIf.answerProperty()
                .get()
                .map(answer -> tried(lines.read(room, this::forecast), asThingsAre, answer.celsius()))
                .orElse(asThingsAre);
        calendar.set(
                read.isEmpty()
                        ? Optional.empty()
                        : Optional.of(SharedCalendar.of(
                                read, away.absenceProperty().get(), desk.days().zone(), room.now())));
        Optional<LaneLine> before = chosen.get();
        lanes.setAll(read);
        chosen.set(read.stream()
                .filter(line -> before.filter(line::isOfSameTrayAs).isPresent())
                .findFirst()
                .or(() -> read.stream().findFirst()));
        List<BroodForecast> forecasts = room.broods().stream()
                .flatMap(brood -> forecast(brood).stream())
                .toList();
        away.read(shown, forecasts, desk.vocabulary().get());
        pots.read(shown, desk.days().date(room.now()));
        orders.made().ifPresent(this::read);
        broods.read(room, this::forecast, words);
        List<String> asked = new ArrayList<>(away.toArrange(shown));
        shown.forEach(tray -> words.separation(tray.forecast(), room.now()).ifPresent(asked::add));
        SacWords sacs = new SacWords(words.vocabulary(), words.days());
        for (BroodView brood : room.broods()) {
            forecast(brood)
                    .flatMap(BroodForecast::sac)
                    .flatMap(sac -> sacs.pull(sac, brood.record().brood(), room.now()))
                    .ifPresent(pull -> asked.add(Texts.say("Sac of {0}: {1}, {2}", brood.code(), pull, SacWords.WHY)));
        }
        toDo.setAll(asked);
        subtitle.set(told(room, broods.taught()));
        isReading = false;
        choose();
    }

    /** Every way a brood may go is weighed for them, so only once they are asked for. */
    private OrdersViewModel newOrders() {
        OrdersViewModel made = new OrdersViewModel(desk.plans(), desk.days());
        read(made);
        return made;
    }

    private void read(OrdersViewModel made) {
        made.read(room(), this::forecast, desk.vocabulary().get());
    }

    private Optional<BroodForecast> forecast(BroodView brood) {
        return whatIf.answerProperty()
                .get()
                .flatMap(answer -> answer.of(brood.code()))
                .or(brood::forecast);
    }

    private static List<LaneLine> tried(List<LaneLine> lines, List<LaneLine> asThingsAre, double celsius) {
        return lines.stream()
                .map(line -> asThingsAre.stream()
                        .filter(line::isOfSameTrayAs)
                        .findFirst()
                        .map(other -> line.tried(celsius, other))
                        .orElse(line))
                .toList();
    }

    private String told(RoomView room, List<LearnedWords.Learned> taught) {
        return taught.isEmpty()
                ? ""
                : whatIf.answerProperty()
                        .get()
                        .map(answer -> WhatIfWords.mark(answer.celsius()))
                        .orElse(Texts.say(
                                "from the counts up to {0} · {1}",
                                desk.days().day(room.now()), LearnedWords.inShort(taught)));
    }

    /** What is said of the tray chosen; not while all is being read, when the list lets go of it for a moment. */
    private void choose() {
        if (isReading) {
            return;
        }
        Optional<Foreseen> usual = ofChosen(asItIs);
        boolean isPlaced = placed.isPresent()
                && chosen.get().filter(placed.get()::isOfSameTrayAs).isPresent();
        if (!isPlaced) {
            placed = chosen.get();
            whatIf.choose(usual);
            table.choose(usual);
        }
        change.set(whatIf.answerProperty()
                .get()
                .flatMap(answer -> usual.flatMap(before -> ofChosen(shown)
                        .map(tried -> whatIfWords().change(answer.celsius(), before, tried, room().now()))))
                .orElse(""));
    }

    private Optional<Foreseen> ofChosen(List<Foreseen> trays) {
        return chosen.get()
                .flatMap(line -> trays.stream()
                        .filter(tray -> tray.code().equals(line.tray())
                                && tray.brood().code().equals(line.brood()))
                        .findFirst());
    }

    private WhatIfWords whatIfWords() {
        return new WhatIfWords(desk.vocabulary().get(), desk.days());
    }

    private ForecastWords words() {
        return new ForecastWords(desk.vocabulary().get(), desk.days());
    }

    private RoomView room() {
        return desk.room().get();
    }

    /** What may stand beneath the lanes. */
    enum Part {
        AHEAD(Texts.say("Plan ahead")),
        ORDERS(Texts.say("What to order")),
        WORDS(Texts.say("In words"));

        private final String word;

        Part(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }
}
