package org.moultwright.ui.forecast;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.jspecify.annotations.Nullable;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.text.ForecastWords;
import org.moultwright.ui.chart.Calendar;
import org.moultwright.ui.chart.Lane;
import org.moultwright.ui.chart.LaneChart;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TrayView;

/** The trays' forecasts, the tray chosen among them, and the days the keeper means to be away. */
final class ForecastViewModel {
    private static final Duration MARGIN = Duration.ofDays(3);

    private final ForecastDesk desk;
    private final ObservableList<LaneLine> lanes = FXCollections.observableArrayList();
    private final ObservableList<YieldLine> yields = FXCollections.observableArrayList();
    private final ObservableList<String> toDo = FXCollections.observableArrayList();
    private final ObservableList<String> notes = FXCollections.observableArrayList();
    private final ObjectProperty<Optional<LaneLine>> chosen = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Calendar>> calendar = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final ObjectProperty<@Nullable LocalDate> awayFrom = new SimpleObjectProperty<>();
    private final ObjectProperty<@Nullable LocalDate> awayTo = new SimpleObjectProperty<>();
    private final ReadOnlyObjectWrapper<Optional<Lane.Absence>> absence = new ReadOnlyObjectWrapper<>(Optional.empty());

    ForecastViewModel(ForecastDesk desk) {
        this.desk = desk;
        desk.room().addListener((observed, before, now) -> read());
        desk.vocabulary().addListener((observed, before, now) -> read());
        awayFrom.addListener((observed, before, now) -> read());
        awayTo.addListener((observed, before, now) -> read());
        read();
    }

    ObservableList<LaneLine> lanes() {
        return lanes;
    }

    ObservableList<YieldLine> yields() {
        return yields;
    }

    /** What the forecast asks of the keeper, in sentences. */
    ObservableList<String> toDo() {
        return toDo;
    }

    /** What a reader of the forecast must know, in sentences. */
    ObservableList<String> notes() {
        return notes;
    }

    ObjectProperty<Optional<LaneLine>> chosenProperty() {
        return chosen;
    }

    ReadOnlyObjectProperty<Optional<Calendar>> calendarProperty() {
        return calendar.getReadOnlyProperty();
    }

    ReadOnlyStringProperty subtitleProperty() {
        return subtitle.getReadOnlyProperty();
    }

    /** The first day away; null while none is planned. */
    ObjectProperty<@Nullable LocalDate> awayFromProperty() {
        return awayFrom;
    }

    /** The last day away. */
    ObjectProperty<@Nullable LocalDate> awayToProperty() {
        return awayTo;
    }

    ReadOnlyObjectProperty<Optional<Lane.Absence>> absenceProperty() {
        return absence.getReadOnlyProperty();
    }

    String nowWord() {
        return "tonight, " + desk.days().shortDay(room().now());
    }

    /** A lane on the calendar all share. */
    Optional<LaneChart.Shown> shown(LaneLine line) {
        return calendar.get().map(shared -> new LaneChart.Shown(line.lane(), shared, absence.get()));
    }

    private void read() {
        RoomView room = room();
        absence.set(planned());
        ForecastWords words = new ForecastWords(desk.vocabulary().get(), desk.days());
        List<LaneLine> read = new ArrayList<>();
        List<YieldLine> ahead = new ArrayList<>();
        List<String> asked = new ArrayList<>();
        List<String> known = new ArrayList<>();
        for (BroodView brood : room.broods()) {
            brood.forecast().ifPresent(forecast -> {
                List<TrayView> occupied =
                        brood.trays().stream().filter(tray -> tray.alive() > 0).toList();
                for (TrayView tray : occupied) {
                    forecast.tray(tray.tray()).ifPresent(ofTray -> {
                        read.add(LaneLine.of(brood, tray, ofTray, room.now(), words));
                        words.separation(ofTray, room.now()).ifPresent(asked::add);
                    });
                }
                if (!occupied.isEmpty()) {
                    ahead.add(yieldOf(brood, forecast));
                    forecast.notes().forEach(note -> known.add(brood.code() + ": " + words.note(note)));
                }
            });
        }
        calendar.set(read.isEmpty() ? Optional.empty() : Optional.of(calendar(read, room.now())));
        String chosenTray = chosen.get().map(LaneLine::tray).orElse("");
        lanes.setAll(read);
        chosen.set(read.stream()
                .filter(line -> line.tray().equals(chosenTray))
                .findFirst()
                .or(() -> read.stream().findFirst()));
        yields.setAll(ahead);
        asked.addAll(0, whileAway(read));
        toDo.setAll(asked);
        notes.setAll(known);
        subtitle.set(
                read.isEmpty() ? "" : "from the counts up to " + desk.days().day(room.now()));
    }

    private YieldLine yieldOf(BroodView brood, BroodForecast forecast) {
        String of = "of " + brood.record().ledger().opened() + " opened";
        return new YieldLine(
                brood.code(),
                forecast.yield().map(ForecastWords::count).orElse("too early to say"),
                desk.vocabulary().get().plural(forecast.yieldInto()) + ", " + of);
    }

    /** Which trays have a window that touches the days away. */
    private List<String> whileAway(List<LaneLine> read) {
        return absence.get().stream()
                .flatMap(away -> read.stream()
                        .flatMap(line -> line.lane().windows().stream()
                                .filter(window -> window.row() == Lane.Row.FIRST && !window.isPast())
                                .filter(window -> window.from().isBefore(away.to())
                                        && window.to().isAfter(away.from()))
                                .limit(1)
                                .map(window -> handsNeeded(line, window, away))))
                .toList();
    }

    private String handsNeeded(LaneLine line, Lane.Window window, Lane.Absence away) {
        Instant from = window.from().isBefore(away.from()) ? away.from() : window.from();
        return "%s may need hands from %s, while you are away. Ask a sitter, or pot early."
                .formatted(line.tray(), desk.days().day(from));
    }

    private Optional<Lane.Absence> planned() {
        LocalDate first = awayFrom.get();
        LocalDate last = awayTo.get();
        if (first == null || last == null || last.isBefore(first)) {
            return Optional.empty();
        }
        Instant from = first.atStartOfDay(desk.days().zone()).toInstant();
        Instant to = last.plusDays(1).atStartOfDay(desk.days().zone()).toInstant();
        String words = "away " + desk.days().days(from, to.minusSeconds(1));
        return Optional.of(new Lane.Absence(from, to, words));
    }

    private Calendar calendar(List<LaneLine> read, Instant now) {
        Instant last = read.stream()
                .flatMap(line -> line.lane().windows().stream())
                .map(Lane.Window::to)
                .max(Instant::compareTo)
                .orElse(now);
        Instant end = Stream.concat(
                        Stream.of(last, now.plus(Duration.ofDays(14))),
                        absence.get().stream().map(Lane.Absence::to))
                .max(Instant::compareTo)
                .orElse(last);
        return new Calendar(desk.days().zone(), now.minus(MARGIN), end.plus(MARGIN), now);
    }

    private RoomView room() {
        return desk.room().get();
    }

    /** How many are expected of one brood. */
    record YieldLine(String brood, String count, String of) {}
}
