package org.moultwright.ui.takealong;

import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.domain.BroodRecord;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.text.SitterWords;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.SittersWork.Written;

/**
 * The desk in a sitter's hands: what each tray needs today, and what the sitter wrote down. A tray's figures change with
 * the sentence that says what was written, for both are read from the book once it is.
 */
public final class SitterViewModel {
    private static final String NOTHING_YET = Texts.say("Nothing was written down yet.");

    private final SitterDesk desk;
    private final ReadOnlyBooleanWrapper isSitting = new ReadOnlyBooleanWrapper();
    private final ObservableList<SitterTray> trays = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper today = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper(NOTHING_YET);
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper canTakeBack = new ReadOnlyBooleanWrapper();

    /**
     * Broods as the book had them once the sitter wrote, by code: nobody else writes meanwhile, and a room still being read
     * may not have it yet.
     */
    private final Map<String, BroodRecord> fresh = new HashMap<>();

    public SitterViewModel(SitterDesk desk) {
        this.desk = desk;
        this.isSitting.set(desk.mode().since().isPresent());
        desk.room().addListener((observed, before, now) -> readIfSitting());
        desk.vocabulary().addListener((observed, before, now) -> readIfSitting());
        readIfSitting();
        if (isSitting.get()) {
            run(SitterViewModel::notTakenBack, () -> desk.work().last(), this::tellLast);
        }
    }

    /** Whether a sitter has the desk. */
    public ReadOnlyBooleanProperty sittingProperty() {
        return isSitting.getReadOnlyProperty();
    }

    SitterDesk desk() {
        return desk;
    }

    ObservableList<SitterTray> trays() {
        return trays;
    }

    /** What was written down last. */
    ReadOnlyStringProperty saidProperty() {
        return said.getReadOnlyProperty();
    }

    /** What did not go, and what to do. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** Whether there is something of the sitter's own to take back. */
    ReadOnlyBooleanProperty canTakeBackProperty() {
        return canTakeBack.getReadOnlyProperty();
    }

    /** The day it is. */
    ReadOnlyStringProperty todayProperty() {
        return today.getReadOnlyProperty();
    }

    /** When to call, with what the displays usually read. */
    List<String> call() {
        return SitterWords.call(SheetOfSitter.usual(room()));
    }

    void handOver() {
        run(
                SitterViewModel::notHandedOver,
                () -> {
                    desk.mode().handOver();
                    return desk.mode();
                },
                mode -> {
                    fresh.clear();
                    canTakeBack.set(false);
                    said.set(NOTHING_YET);
                    read();
                    isSitting.set(true);
                });
    }

    void keeperTakesItBack() {
        run(
                SitterViewModel::notTakenBack,
                () -> {
                    SittersReport report =
                            new SittersReport(desk.mode().since(), desk.work().all());
                    desk.mode().takeBack();
                    return report;
                },
                report -> {
                    isSitting.set(false);
                    desk.shell().tell(report.notice(desk.days()));
                });
    }

    void dead(SitterTray tray) {
        write(() -> desk.deeds().dead(tray.view()));
    }

    void watered(SitterTray tray) {
        write(() -> desk.deeds().watered(tray.view()));
    }

    /** Takes back what the sitter wrote last, in this sitting, however often the desk was opened since. */
    void takeBack() {
        run(
                SitterViewModel::notTakenBack,
                () -> {
                    Optional<Written> last = desk.work().last();
                    last.ifPresent(written -> desk.undo().undo(written.deed()));
                    return last.map(this::after);
                },
                taken -> taken.ifPresent(now -> show(now, Texts.say("Taken back: {0}.", what(now.of())))));
    }

    private void write(Supplier<Deed.Summary> deed) {
        run(
                SitterViewModel::notWritten,
                () -> desk.work().find(deed.get().id()).map(this::after),
                kept -> kept.ifPresent(now -> show(now, Texts.say("Written down: {0}.", what(now.of())))));
    }

    /** The book after a tray was written of. */
    private Fresh after(Written of) {
        return new Fresh(
                of,
                desk.book().find(of.brood()).orElseThrow(),
                desk.work().last().isPresent());
    }

    private void show(Fresh now, String sentence) {
        fresh.put(now.of().brood(), now.record());
        read();
        canTakeBack.set(now.isSomethingLeft());
        said.set(trays.stream()
                .filter(tray -> tray.isOf(now.of().brood(), now.of().tray()))
                .findFirst()
                .map(tray -> Texts.say(
                        "{0} {1}. {2} alive.",
                        sentence, tray.today(), tray.view().alive()))
                .orElse(sentence));
        desk.readAgain().run();
    }

    private void tellLast(Optional<Written> last) {
        canTakeBack.set(last.isPresent());
        last.ifPresent(written -> said.set(Texts.say(
                "Written last: {0}, {1}, {2}.",
                what(written), desk.days().shortDay(written.at()), desk.days().clock(written.at()))));
    }

    private static String what(Written of) {
        return of.dead() > 0 ? Texts.say("{0}, one dead", of.tray()) : Texts.say("{0}, water", of.tray());
    }

    private static String notWritten(String fault) {
        return Texts.say("Not written down: {0}", fault);
    }

    private static String notTakenBack(String fault) {
        return Texts.say("Not taken back. {0}", fault);
    }

    private static String notHandedOver(String fault) {
        return Texts.say("Not handed over: {0}", fault);
    }

    private <T> void run(UnaryOperator<String> ifNot, Supplier<T> work, Consumer<T> done) {
        desk.runner().<T>run(progress -> work.get(), outcome -> {
            problem.set(
                    outcome instanceof Outcome.Failed<T> failed
                            ? ifNot.apply(String.valueOf(failed.fault().getMessage()))
                            : "");
            if (outcome instanceof Outcome.Done<T> ended) {
                done.accept(ended.value());
            }
        });
    }

    /** Nobody looks while the keeper has the desk. */
    private void readIfSitting() {
        if (isSitting.get()) {
            read();
        }
    }

    /** What holds animals, and what the sitter took the last one out of today: that can be taken back. */
    private void read() {
        Instant clock = desk.clock().instant();
        LocalDate day = desk.days().date(clock);
        today.set(desk.days().longDay(clock));
        Instant from = day.atStartOfDay(desk.days().zone()).toInstant();
        Instant to = day.plusDays(1).atStartOfDay(desk.days().zone()).toInstant();
        SitterWords words = new SitterWords(desk.vocabulary().get(), desk.days());
        List<SitterTray> now = room().broods().stream()
                .flatMap(brood -> Expected.every(brood).stream())
                .map(tray -> {
                    String expected = words.expected(tray.moult(), tray.partBy(), from, to);
                    Optional<BroodRecord> since =
                            Optional.ofNullable(fresh.get(tray.brood().code()));
                    return new SitterTray(
                            since.map(record -> tray.tray().in(record, clock)).orElse(tray.tray()),
                            expected,
                            SitterTray.doneToday(
                                    since.orElse(tray.brood().record()),
                                    tray.tray().tray(),
                                    from,
                                    desk.days()));
                })
                .filter(tray -> tray.view().alive() > 0 || !tray.done().isEmpty())
                .toList();
        if (!now.equals(trays)) {
            trays.setAll(now);
        }
    }

    private RoomView room() {
        return desk.room().get();
    }

    /**
     * A brood as the book had it once a sitter's press was kept.
     *
     * @param of the press, or the one taken back
     * @param isSomethingLeft whether there is more to take back
     */
    private record Fresh(Written of, BroodRecord record, boolean isSomethingLeft) {}
}
