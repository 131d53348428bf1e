package org.moultwright.ui.broods;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.scene.image.Image;
import org.moultwright.compute.history.BroodSurvival;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.PhotoNote;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.chart.Calendar;
import org.moultwright.ui.chart.ClimateStrip;
import org.moultwright.ui.chart.LedgerBars;
import org.moultwright.ui.chart.Ribbon;
import org.moultwright.ui.chart.RibbonChart;
import org.moultwright.ui.chart.RibbonWords;
import org.moultwright.ui.chart.SurvivalChart;
import org.moultwright.ui.control.WrittenDay;
import org.moultwright.ui.photo.PhotoDesk;
import org.moultwright.ui.print.Pixels;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;

/** One brood looked at closely: its ribbon over the air it lived in, every animal's way, survival, and others beside it. */
final class BroodPage {
    private static final int MOST_BESIDE = 3;
    private static final Duration MARGIN = Duration.ofDays(3);

    private final BroodsDesk desk;
    private final BroodLine line;
    private final Calendar calendar;
    private final Runnable close;
    private final ObservableList<BroodFacts> facts = FXCollections.observableArrayList();
    private final ObservableList<String> beside = FXCollections.observableArrayList();
    private final ObjectProperty<Optional<Instant>> reading = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyStringWrapper readingWords = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper news = new ReadOnlyStringWrapper("");

    BroodPage(BroodsDesk desk, BroodLine line, Runnable close) {
        this.desk = desk;
        this.line = line;
        this.close = close;
        this.calendar = calendar(line.ribbon());
        reading.addListener(
                (observed, before, now) -> readingWords.set(now.map(this::words).orElse("")));
        read(line.code());
    }

    BroodLine line() {
        return line;
    }

    /** What was read of the brood, and of those beside it, in that order; empty while it is being read. */
    ObservableList<BroodFacts> facts() {
        return facts;
    }

    /** The other broods that can stand beside it. */
    List<String> others() {
        return room().broods().stream()
                .map(BroodView::code)
                .filter(code -> !code.equals(line.code()))
                .toList();
    }

    /** The codes of those that do. */
    ObservableList<String> beside() {
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
        return facts.stream()
                .findFirst()
                .map(own -> own.brood().record().photos().stream()
                        .sorted(Comparator.comparing(PhotoNote::at).reversed())
                        .toList())
                .orElse(List.of());
    }

    /** The air under the ribbon; empty while it is being read. */
    Optional<ClimateStrip.Shown> climate() {
        return facts.stream()
                .findFirst()
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
                        reading.get()));
    }

    List<LedgerBars.Bar> bars() {
        return facts.stream()
                .findFirst()
                .map(own -> BroodLedger.way(own.brood(), vocabulary()))
                .orElse(List.of());
    }

    /** What is not explained, or that nothing is. */
    String balance() {
        return facts.stream().findFirst().map(BroodPage::balance).orElse("");
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
        return facts.stream()
                .flatMap(one -> one.survival().stream()
                        .map(survival -> new SurvivalChart.Curve(
                                one.brood().code(),
                                survival.days(),
                                survival.points().stream()
                                        .map(point -> new SurvivalChart.Step(
                                                point.days(), point.survival(), point.lower(), point.upper()))
                                        .toList())))
                .toList();
    }

    /** "93 % of 118 alive after 40 days; 95 % limits 87 to 96 %.": what the curve says in words. */
    String survivalWords() {
        return facts.stream()
                .findFirst()
                .map(own -> own.survival().map(BroodPage::words).orElse(Texts.say("Nothing of it is in a tray yet.")))
                .orElse("");
    }

    private static String words(BroodSurvival survival) {
        long days = Math.round(survival.days());
        BroodSurvival.Point last = survival.last();
        if (last.survival() >= 1) {
            return Texts.say(
                    "All {0} alive after {1} days; no death yet to tell limits from.", survival.animals(), days);
        }
        return Texts.say(
                "{0} % of {1} alive after {2} days; 95 % limits {3} to {4} %.",
                Math.round(100 * last.survival()),
                survival.animals(),
                days,
                Math.round(100 * last.lower()),
                Math.round(100 * last.upper()));
    }

    /** Puts a brood beside this one, or takes it away. */
    void toggle(String code) {
        if (beside.remove(code)) {
            facts.removeIf(one -> one.brood().code().equals(code));
        } else if (beside.size() < MOST_BESIDE) {
            beside.add(code);
            read(code);
        }
    }

    boolean isFull() {
        return beside.size() >= MOST_BESIDE;
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
        news.set(desk.paper().printer().print(line.code(), page));
    }

    void save(Supplier<Image> page) {
        desk.paper().chooser().choose(line.code() + ".pdf").ifPresent(pdf -> save(page.get(), pdf));
    }

    private void save(Image page, Path pdf) {
        desk.runner()
                .<Path>run(
                        progress -> {
                            desk.paper()
                                    .pages()
                                    .save(
                                            Pixels.of(page),
                                            line.code(),
                                            desk.clock().instant(),
                                            pdf);
                            return pdf;
                        },
                        outcome -> {
                            if (outcome instanceof Outcome.Done<Path> done) {
                                news.set(Texts.say("Saved as {0}.", done.value()));
                            } else if (outcome instanceof Outcome.Failed<Path> failed) {
                                news.set(String.valueOf(failed.fault().getMessage()));
                            }
                        });
    }

    /** Reads a brood aside: years of readings take a moment. */
    private void read(String code) {
        Optional<BroodView> brood = room().brood(code);
        Instant now = room().now();
        brood.ifPresent(view -> desk.waysIn()
                .intakeRunner()
                .<BroodFacts>run(progress -> BroodFacts.of(view, now), outcome -> {
                    if (outcome instanceof Outcome.Done<BroodFacts> done) {
                        show(done.value());
                    } else if (outcome instanceof Outcome.Failed<BroodFacts> failed) {
                        news.set(String.valueOf(failed.fault().getMessage()));
                    }
                }));
    }

    /** In the order they were asked for, whichever was read first. */
    private void show(BroodFacts read) {
        List<String> order = new ArrayList<>(List.of(line.code()));
        order.addAll(beside);
        List<BroodFacts> all = new ArrayList<>(facts);
        all.add(read);
        all.removeIf(one -> !order.contains(one.brood().code()));
        all.sort(Comparator.comparing(one -> order.indexOf(one.brood().code())));
        facts.setAll(all);
    }

    private String words(Instant day) {
        return new RibbonWords(vocabulary(), desk.days()).day(line.ribbon(), day);
    }

    private Calendar calendar(Ribbon ribbon) {
        Instant now = room().now();
        Instant first = ribbon.laid()
                .or(() -> ribbon.past().stream().findFirst().map(Ribbon.Point::at))
                .orElse(now);
        Instant last = ribbon.expected().isEmpty()
                ? ribbon.inside().stream()
                        .map(Ribbon.Inside::from)
                        .max(Instant::compareTo)
                        .orElse(now)
                : ribbon.expected().get(ribbon.expected().size() - 1).at();
        return new Calendar(
                desk.days().zone(), first.minus(MARGIN), last.isAfter(now) ? last.plus(MARGIN) : now.plus(MARGIN), now);
    }

    private RoomView room() {
        return desk.room().get();
    }
}
