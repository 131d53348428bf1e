package org.moultwright.ui.broods;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.image.Image;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.PhotoNote;
import org.moultwright.language.Texts;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.chart.Calendar;
import org.moultwright.ui.chart.ClimateStrip;
import org.moultwright.ui.chart.LedgerBars;
import org.moultwright.ui.chart.RibbonChart;
import org.moultwright.ui.chart.RibbonWords;
import org.moultwright.ui.chart.SurvivalChart;
import org.moultwright.ui.control.WrittenDay;
import org.moultwright.ui.photo.PhotoDesk;

/** One brood looked at closely: its ribbon over the air it lived in, every animal's way, survival, and others beside it. */
final class BroodPage {
    private final BroodsDesk desk;
    private final BroodLine line;
    private final Calendar calendar;
    private final Runnable close;
    private final ObjectProperty<Optional<Instant>> reading = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyStringWrapper readingWords = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper news = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final BroodsBeside beside;
    private final BroodOnPaper paper;

    BroodPage(BroodsDesk desk, BroodLine line, Runnable close) {
        this.desk = desk;
        this.line = line;
        this.close = close;
        this.calendar = BroodCalendar.of(
                line.ribbon(), desk.days().zone(), desk.room().get().now());
        reading.addListener(
                (observed, before, now) -> readingWords.set(now.map(this::words).orElse("")));
        this.beside = new BroodsBeside(desk, line.code(), problem::set);
        this.paper = new BroodOnPaper(desk, line.code(), news::set, problem::set);
    }

    BroodLine line() {
        return line;
    }

    /** What was read of it, and of the broods beside it. */
    BroodsBeside beside() {
        return beside;
    }

    ObjectProperty<Optional<Instant>> readingProperty() {
        return reading;
    }

    ReadOnlyStringProperty readingWordsProperty() {
        return readingWords.getReadOnlyProperty();
    }

    /** What came of printing or saving. */
    ReadOnlyStringProperty newsProperty() {
        return news.getReadOnlyProperty();
    }

    Vocabulary vocabulary() {
        return desk.vocabulary().get();
    }

    /** What could not be read, printed or saved, and what to do. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    String nowWord() {
        return Texts.say("tonight, {0}", desk.days().shortDay(calendar.now()));
    }

    /** The day, with its year, for paper that is read later. */
    String dateWord() {
        return WrittenDay.of(desk.days().date(calendar.now()));
    }

    Calendar calendar() {
        return calendar;
    }

    RibbonChart.Shown ribbon() {
        return new RibbonChart.Shown(
                line.ribbon(), calendar, Math.max(1, line.ribbon().mostAnimals()));
    }

    PhotoDesk photoDesk() {
        return desk.photos();
    }

    /** The photos of its trays, the newest first; none while it is being read. */
    List<PhotoNote> photos() {
        return beside.own()
                .map(own -> own.brood().record().photos().stream()
                        .sorted(Comparator.comparing(PhotoNote::at).reversed())
                        .toList())
                .orElse(List.of());
    }

    /**
     * The air under the ribbon; empty while it is not known yet.
     *
     * @param readDay the day that is read in it
     */
    Optional<ClimateStrip.Shown> climate(Optional<Instant> readDay) {
        return beside.own()
                .map(own -> new ClimateStrip.Shown(
                        calendar,
                        own.climate().days().stream()
                                .map(day -> new ClimateStrip.Day(
                                        day.from(), day.to(), day.lowCelsius(), day.meanCelsius(), day.highCelsius()))
                                .toList(),
                        own.climate().weeks().stream()
                                .map(week -> new ClimateStrip.Week(week.from(), week.to(), week.mouldIndex()))
                                .toList(),
                        own.brood().record().mould().stream().map(MouldNote::at).toList(),
                        readDay));
    }

    List<LedgerBars.Bar> bars() {
        return beside.own()
                .map(own -> BroodLedger.way(own.brood(), vocabulary()))
                .orElse(List.of());
    }

    /** What is not explained, or that nothing is. */
    String balance() {
        return beside.own().map(BroodPage::balance).orElse("");
    }

    private static String balance(BroodFacts own) {
        if (own.brood().record().ledger().opened() == 0) {
            return Texts.say("Nothing is known of its animals until the sac is opened.");
        }
        return own.open().isEmpty()
                ? Texts.say("Every animal is accounted for.")
                : Texts.say("Not explained: {0}.", String.join("; ", own.open()));
    }

    List<SurvivalChart.Curve> curves() {
        return beside.facts().stream()
                .flatMap(one -> SurvivalFigure.curve(one).stream())
                .toList();
    }

    /** What its own curve says in words. */
    String survivalWords() {
        return beside.own().map(SurvivalFigure::words).orElse("");
    }

    void step(int days) {
        Instant wanted = reading.get().orElse(calendar.now()).plus(Duration.ofDays(days));
        if (!wanted.isBefore(calendar.from()) && !wanted.isAfter(calendar.to())) {
            reading.set(Optional.of(wanted));
        }
    }

    void close() {
        close.run();
    }

    void print(Supplier<Image> page) {
        paper.print(page);
    }

    void save(Supplier<Image> page) {
        paper.save(page);
    }

    private String words(Instant day) {
        return new RibbonWords(vocabulary(), desk.days()).day(line.ribbon(), day);
    }
}
