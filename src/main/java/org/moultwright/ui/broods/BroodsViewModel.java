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
import org.moultwright.language.Texts;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.chart.Calendar;
import org.moultwright.ui.chart.Ribbon;
import org.moultwright.ui.chart.RibbonChart;
import org.moultwright.ui.chart.RibbonWords;
import org.moultwright.ui.shell.DeedLine;
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
    private final ReadOnlyObjectWrapper<Optional<BroodPage>> closely = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<TimingViewModel>> timing =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final TakeInViewModel takeIn;
    private final DeedLine deeds;
    private final SacForms forms;
    private final BroodAccount account;
    private double fullScaleAnimals = 1;

    /** The brood to be chosen as soon as it is there. */
    private String wanted = "";

    BroodsViewModel(BroodsDesk desk) {
        this.desk = desk;
        this.takeIn = new TakeInViewModel(desk.waysIn(), desk.readAgain());
        this.deeds = new DeedLine(
                desk.runner(), desk.beliefs().undo(), desk.beliefs().saveLine(), desk.readAgain());
        this.forms = new SacForms(desk, deeds, this::chosenBrood, brood -> wanted = brood);
        this.account = new BroodAccount(desk);
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

    ObservableObjectValue<Vocabulary> vocabularyProperty() {
        return desk.vocabulary();
    }

    /** The forms about a sac. */
    SacForms forms() {
        return forms;
    }

    /** What is told of the chosen brood. */
    BroodAccount account() {
        return account;
    }

    /** What was done last, and what could not be. */
    DeedLine deeds() {
        return deeds;
    }

    /** The timing of one brood while it is open. */
    ReadOnlyObjectProperty<Optional<TimingViewModel>> timingProperty() {
        return timing.getReadOnlyProperty();
    }

    /** Opens the timing of the chosen brood. */
    void openTiming() {
        chosenBrood()
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
        return Texts.say("tonight, {0}", desk.days().shortDay(room().now()));
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

    /** Looks at the chosen brood closely. */
    void look() {
        chosen.get()
                .ifPresent(line ->
                        closely.set(Optional.of(new BroodPage(desk, line, () -> closely.set(Optional.empty())))));
    }

    /** The brood looked at closely, if one is. */
    ReadOnlyObjectProperty<Optional<BroodPage>> closelyProperty() {
        return closely.getReadOnlyProperty();
    }

    private Optional<BroodView> chosenBrood() {
        return chosen.get().flatMap(line -> room().brood(line.code()));
    }

    private void read() {
        RoomView room = room();
        List<BroodLine> read = new BroodLines(desk.vocabulary().get(), desk.days()).of(room);
        calendar.set(read.isEmpty() ? Optional.empty() : Optional.of(calendar(read, room.now())));
        fullScaleAnimals =
                read.stream().mapToDouble(line -> line.ribbon().mostAnimals()).reduce(1, Math::max);
        String before = chosen.get().map(BroodLine::code).orElse("");
        String chosenCode = room.brood(wanted).isPresent() ? wanted : before;
        wanted = "";
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
        return Texts.say("{0} {1} · {2} animals in trays", count, Texts.count(count, "brood", "broods"), alive);
    }

    private void showChosen() {
        reading.set(Optional.empty());
        account.tell(chosenBrood(), chosen.get());
    }

    private void readDay() {
        chosen.get().ifPresent(line -> readDay(line, reading.get()));
    }

    private RoomView room() {
        return desk.room().get();
    }
}
