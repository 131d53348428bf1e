package org.moultwright.ui.broods;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableObjectValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.text.ForecastWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.chart.Calendar;
import org.moultwright.ui.chart.LedgerBars;
import org.moultwright.ui.chart.Ribbon;
import org.moultwright.ui.chart.RibbonChart;
import org.moultwright.ui.chart.RibbonWords;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;

/** The broods, the one chosen among them, and the day of it being read. */
final class BroodsViewModel {
    private static final Duration MARGIN = Duration.ofDays(5);
    private static final Duration LONGEST_PAST = Duration.ofDays(400);
    private static final Duration ONE_DAY = Duration.ofDays(1);

    private final BroodsDesk desk;
    private final ObservableList<BroodLine> lines = FXCollections.observableArrayList();
    private final ObjectProperty<Optional<BroodLine>> chosen = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Optional<Instant>> reading = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyStringWrapper readingWords = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Optional<Calendar>> calendar = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObservableList<BroodStory.StoryLine> story = FXCollections.observableArrayList();
    private final ObservableList<LedgerBars.Bar> bars = FXCollections.observableArrayList();
    private final ObservableList<BroodLedger.EntryLine> entries = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper ledgerTitle = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper ledgerNote = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Optional<OpenSacViewModel>> opening =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<TimingViewModel>> timing =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final TakeInViewModel takeIn;
    private double fullScaleAnimals = 1;

    BroodsViewModel(BroodsDesk desk) {
        this.desk = desk;
        this.takeIn = new TakeInViewModel(desk.waysIn(), desk.readAgain());
        desk.room().addListener((observed, before, now) -> read());
        desk.vocabulary().addListener((observed, before, now) -> read());
        chosen.addListener((observed, before, now) -> showChosen());
        reading.addListener((observed, before, now) -> readDay());
        read();
    }

    ObservableList<BroodLine> lines() {
        return lines;
    }

    ObjectProperty<Optional<BroodLine>> chosenProperty() {
        return chosen;
    }

    /** The day being read in the chosen brood's ribbon. */
    ObjectProperty<Optional<Instant>> readingProperty() {
        return reading;
    }

    ReadOnlyStringProperty readingWordsProperty() {
        return readingWords.getReadOnlyProperty();
    }

    ReadOnlyStringProperty subtitleProperty() {
        return subtitle.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<Optional<Calendar>> calendarProperty() {
        return calendar.getReadOnlyProperty();
    }

    ObservableList<BroodStory.StoryLine> story() {
        return story;
    }

    ObservableList<LedgerBars.Bar> bars() {
        return bars;
    }

    ObservableList<BroodLedger.EntryLine> entries() {
        return entries;
    }

    ReadOnlyStringProperty ledgerTitleProperty() {
        return ledgerTitle.getReadOnlyProperty();
    }

    ReadOnlyStringProperty ledgerNoteProperty() {
        return ledgerNote.getReadOnlyProperty();
    }

    ObservableObjectValue<Vocabulary> vocabularyProperty() {
        return desk.vocabulary();
    }

    /** The form for a new sac while it is open. */
    ReadOnlyObjectProperty<Optional<OpenSacViewModel>> openingProperty() {
        return opening.getReadOnlyProperty();
    }

    /** The timing of one brood while it is open. */
    ReadOnlyObjectProperty<Optional<TimingViewModel>> timingProperty() {
        return timing.getReadOnlyProperty();
    }

    /** Opens the timing of the chosen brood. */
    void openTiming() {
        chosen.get()
                .flatMap(line -> room().brood(line.code()))
                .ifPresent(brood ->
                        timing.set(Optional.of(new TimingViewModel(desk, brood, () -> timing.set(Optional.empty())))));
    }

    /** The brood folder on its way in. */
    TakeInViewModel takeIn() {
        return takeIn;
    }

    /** Opens the demo room; empty where this is it. */
    Optional<Runnable> demoRoom() {
        return desk.waysIn().demoRoom();
    }

    /** The word beside the line of now. */
    String nowWord() {
        return "tonight, " + desk.days().shortDay(room().now());
    }

    /** A line's ribbon on the scale all share. */
    Optional<RibbonChart.Shown> shown(BroodLine line) {
        return calendar.get().map(shared -> new RibbonChart.Shown(line.ribbon(), shared, fullScaleAnimals));
    }

    /** A day of any brood in words. */
    void readDay(BroodLine line, Optional<Instant> day) {
        RibbonWords words = new RibbonWords(desk.vocabulary().get(), desk.days());
        readingWords.set(day.map(instant -> line.code() + ", " + words.day(line.ribbon(), instant))
                .orElse(""));
    }

    /** Reads the chosen brood some days before or after the day read last, tonight at first. */
    void step(int byDays) {
        calendar.get().ifPresent(shared -> {
            Instant wanted = reading.get().orElse(shared.now()).plus(ONE_DAY.multipliedBy(byDays));
            if (!wanted.isBefore(shared.from()) && !wanted.isAfter(shared.to())) {
                reading.set(Optional.of(wanted));
            }
        });
    }

    void openSac() {
        opening.set(Optional.of(new OpenSacViewModel(desk, this::closeSac)));
    }

    private void closeSac() {
        opening.set(Optional.empty());
    }

    private void read() {
        RoomView room = room();
        ForecastWords words = new ForecastWords(desk.vocabulary().get(), desk.days());
        List<BroodLine> read = room.broods().stream()
                .map(brood -> BroodLine.of(brood, room.now(), words))
                .toList();
        calendar.set(read.isEmpty() ? Optional.empty() : Optional.of(calendar(read, room.now())));
        fullScaleAnimals =
                read.stream().mapToDouble(line -> line.ribbon().mostAnimals()).reduce(1, Math::max);
        String chosenCode = chosen.get().map(BroodLine::code).orElse("");
        lines.setAll(read);
        chosen.set(read.stream()
                .filter(line -> line.code().equals(chosenCode))
                .findFirst()
                .or(() -> read.stream().findFirst()));
        subtitle.set(subtitle(room));
    }

    private Calendar calendar(List<BroodLine> read, Instant now) {
        Instant first = read.stream()
                .flatMap(line -> Stream.concat(
                        line.ribbon().laid().stream(),
                        line.ribbon().past().stream().map(Ribbon.Point::at)))
                .min(Instant::compareTo)
                .orElse(now.minus(MARGIN));
        Instant last = read.stream()
                .flatMap(line -> Stream.concat(
                        line.ribbon().expected().stream().map(Ribbon.Point::at),
                        line.ribbon().inside().stream().map(Ribbon.Inside::from)))
                .max(Instant::compareTo)
                .orElse(now);
        Instant earliest = now.minus(LONGEST_PAST);
        Instant from = first.isBefore(earliest) ? earliest : first;
        return new Calendar(desk.days().zone(), from.minus(MARGIN), last.plus(MARGIN), now);
    }

    private static String subtitle(RoomView room) {
        int count = room.broods().size();
        if (count == 0) {
            return "";
        }
        int alive = room.broods().stream()
                .mapToInt(brood -> brood.record().ledger().aliveInTrays())
                .sum();
        return "%d %s · %d animals in trays".formatted(count, count == 1 ? "brood" : "broods", alive);
    }

    private void showChosen() {
        reading.set(Optional.empty());
        Optional<BroodView> brood = chosen.get().flatMap(line -> room().brood(line.code()));
        Vocabulary vocabulary = desk.vocabulary().get();
        story.setAll(brood.map(view -> BroodStory.of(view.record(), vocabulary, desk.days()))
                .orElse(List.of()));
        entries.setAll(brood.map(view -> BroodLedger.entries(view.record().ledger(), vocabulary, desk.days()))
                .orElse(List.of()));
        bars.setAll(brood.map(this::bars).orElse(List.of()));
        ledgerTitle.set(
                brood.map(view -> BroodLedger.title(view.record().ledger())).orElse(""));
        ledgerNote.set(brood.map(BroodLedger::note).orElse(""));
    }

    private List<LedgerBars.Bar> bars(BroodView view) {
        List<Ribbon.Point> past = chosen.get().map(line -> line.ribbon().past()).orElse(List.of());
        return past.isEmpty()
                ? List.of()
                : BroodLedger.bars(
                        view.record().ledger(),
                        BroodLedger.colour(past.get(past.size() - 1).living()));
    }

    private void readDay() {
        chosen.get().ifPresent(line -> readDay(line, reading.get()));
    }

    private RoomView room() {
        return desk.room().get();
    }
}
