package org.moultwright.ui.takealong;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.text.SitterWords;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.RoomView;

/** The desk in a sitter's hands: what each tray needs today, and what the sitter wrote down. */
public final class SitterViewModel {
    private final SitterDesk desk;
    private final ReadOnlyBooleanWrapper isSitting = new ReadOnlyBooleanWrapper();
    private final ObservableList<SitterTray> trays = FXCollections.observableArrayList();
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final List<Deed.Summary> written = new ArrayList<>();
    private final ReadOnlyBooleanWrapper canTakeBack = new ReadOnlyBooleanWrapper();

    public SitterViewModel(SitterDesk desk) {
        this.desk = desk;
        this.isSitting.set(desk.mode().since().isPresent());
        desk.room().addListener((observed, before, now) -> readIfSitting());
        desk.vocabulary().addListener((observed, before, now) -> readIfSitting());
        readIfSitting();
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

    String today() {
        return desk.days().longDay(desk.clock().instant());
    }

    /** When to call, with what the displays usually read. */
    List<String> call() {
        return SitterWords.call(SheetOfSitter.usual(room()));
    }

    void handOver() {
        run(
                () -> {
                    desk.mode().handOver();
                    return Optional.empty();
                },
                deed -> {
                    read();
                    isSitting.set(true);
                });
    }

    void keeperTakesItBack() {
        run(
                () -> {
                    desk.mode().takeBack();
                    return Optional.empty();
                },
                deed -> {
                    written.clear();
                    canTakeBack.set(false);
                    said.set("");
                    isSitting.set(false);
                });
    }

    void dead(SitterTray tray) {
        write(Texts.say("{0}, one dead", tray.tray()), () -> desk.deeds().dead(tray.view()));
    }

    void watered(SitterTray tray) {
        write(Texts.say("{0}, water", tray.tray()), () -> desk.deeds().watered(tray.view()));
    }

    void takeBack() {
        if (written.isEmpty()) {
            return;
        }
        UUID last = written.remove(written.size() - 1).id();
        canTakeBack.set(!written.isEmpty());
        run(() -> Optional.of(desk.undo().undo(last)), deed -> {
            said.set(Texts.say("Taken back."));
            desk.readAgain().run();
        });
    }

    private void write(String what, Supplier<Deed.Summary> deed) {
        run(() -> Optional.of(deed.get()), kept -> {
            kept.ifPresent(written::add);
            canTakeBack.set(true);
            said.set(Texts.say("Written down: {0}.", what));
            desk.readAgain().run();
        });
    }

    private void run(Supplier<Optional<Deed.Summary>> work, Consumer<Optional<Deed.Summary>> done) {
        desk.runner().<Optional<Deed.Summary>>run(progress -> work.get(), outcome -> {
            problem.set(
                    outcome instanceof Outcome.Failed<Optional<Deed.Summary>> failed
                            ? Texts.say("Not written down: {0}", failed.fault().getMessage())
                            : "");
            if (outcome instanceof Outcome.Done<Optional<Deed.Summary>> ended) {
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

    private void read() {
        LocalDate today = desk.days().date(desk.clock().instant());
        Instant from = today.atStartOfDay(desk.days().zone()).toInstant();
        Instant to = today.plusDays(1).atStartOfDay(desk.days().zone()).toInstant();
        SitterWords words = new SitterWords(desk.vocabulary().get(), desk.days());
        List<SitterTray> now = Expected.in(room()).stream()
                .map(tray -> new SitterTray(
                        tray.tray(),
                        words.expected(tray.moult(), tray.partBy(), from, to),
                        SitterTray.doneToday(tray.brood().record(), tray.tray().tray(), from, desk.days())))
                .toList();
        if (!now.equals(trays)) {
            trays.setAll(now);
        }
    }

    private RoomView room() {
        return desk.room().get();
    }
}
