package org.moultwright.ui.register;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableObjectValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.collections.transformation.FilteredList;
import javafx.collections.transformation.SortedList;
import org.jspecify.annotations.Nullable;
import org.moultwright.domain.PotEvent;
import org.moultwright.domain.PotEvent.What;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TendPots.Tended;

/**
 * The register: which pots are shown, which one is looked at, which are selected, and what is written down of them.
 *
 * <p>What is done concerns the pots selected; where none is, the one looked at.
 */
final class RegisterViewModel {
    private final RegisterDesk desk;
    private final RegisterDeeds deeds;
    private final PotMarks marks = new PotMarks();
    private final ObservableList<PotRow> all = FXCollections.observableArrayList();
    private final FilteredList<PotRow> filtered = new FilteredList<>(all);
    private final SortedList<PotRow> shown = new SortedList<>(filtered);
    private final Map<String, PotRow> byCode = new HashMap<>();
    private final StringProperty filterText = new SimpleStringProperty("");
    /** Whether what is shown was written after the room was read. */
    private boolean isAhead;

    /** Codes that were on no pot since the selection was begun: the next scan would else hide them. */
    private int notFound;

    private final ObjectProperty<RegisterFilter.Kind> kind = new SimpleObjectProperty<>(RegisterFilter.Kind.ALL);
    private final ReadOnlyObjectWrapper<Optional<PotRow>> cursor = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper scanProblem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper scanned = new ReadOnlyStringWrapper("");
    private final ObjectProperty<@Nullable LocalDate> day = new SimpleObjectProperty<>(null);

    RegisterViewModel(RegisterDesk desk) {
        this.desk = desk;
        this.deeds = new RegisterDeeds(desk);
        filterText.addListener((observed, before, now) -> filter());
        kind.addListener((observed, before, now) -> filter());
        marks.revisionProperty().addListener((observed, before, now) -> {
            notFound = marks.isEmpty() ? 0 : notFound;
            if (kind.get() == RegisterFilter.Kind.SELECTED) {
                filter();
            }
        });
        desk.room().addListener((observed, before, now) -> read(now));
        read(desk.room().get());
    }

    RegisterDeeds deeds() {
        return deeds;
    }

    PotMarks marks() {
        return marks;
    }

    /** The pots shown, in the order chosen. */
    SortedList<PotRow> shown() {
        return shown;
    }

    /** Every pot there is, shown or not. */
    ObservableList<PotRow> all() {
        return all;
    }

    /** The pot of a code that is in the register. */
    PotRow byCode(String code) {
        return Objects.requireNonNull(byCode.get(code), code);
    }

    StringProperty filterTextProperty() {
        return filterText;
    }

    ObjectProperty<RegisterFilter.Kind> kindProperty() {
        return kind;
    }

    /** The pot looked at. */
    ReadOnlyObjectProperty<Optional<PotRow>> cursorProperty() {
        return cursor.getReadOnlyProperty();
    }

    /** Why the last code read is on no pot; empty where it was. */
    ReadOnlyStringProperty scanProblemProperty() {
        return scanProblem.getReadOnlyProperty();
    }

    /** Which pot the last code read is on. */
    ReadOnlyStringProperty scannedProperty() {
        return scanned.getReadOnlyProperty();
    }

    /** The day for which things are written down; none for today. */
    ObjectProperty<@Nullable LocalDate> dayProperty() {
        return day;
    }

    DayWords days() {
        return desk.days();
    }

    Instant now() {
        return desk.clock().instant();
    }

    ObservableObjectValue<Vocabulary> vocabularyProperty() {
        return desk.vocabulary();
    }

    /** Where ledgers hold other numbers in pots than are alive here; empty while the ledgers shown are older than that. */
    String disagreement() {
        return isAhead ? "" : RegisterWords.disagreement(desk.room().get(), all);
    }

    void look(@Nullable PotRow row) {
        cursor.set(Optional.ofNullable(row));
    }

    /** Calls back whenever other pots, or the same in another state, are there. */
    void whenRead(Runnable action) {
        all.addListener((InvalidationListener) changed -> action.run());
    }

    void markCursor() {
        cursor.get().ifPresent(row -> marks.add(row.code()));
    }

    /** Selects from the pot looked at to another, as they are shown. */
    void markUpTo(PotRow other) {
        int to = shown.indexOf(other);
        int from = cursor.get().map(shown::indexOf).filter(at -> at >= 0).orElse(to);
        marks.addAll(shown.subList(Math.min(from, to), Math.max(from, to) + 1).stream()
                .map(PotRow::code)
                .toList());
    }

    /** Shows everything again; if everything is shown, selects none. False where there was nothing to step back from. */
    boolean stepBack() {
        boolean isFiltered = !filterText.get().isEmpty() || kind.get() != RegisterFilter.Kind.ALL;
        if (isFiltered) {
            filterText.set("");
            kind.set(RegisterFilter.Kind.ALL);
        } else if (!marks.isEmpty()) {
            marks.clear();
        } else {
            return false;
        }
        return true;
    }

    /** Selects the pot looked at, or no longer. */
    void toggleCursor() {
        cursor.get().ifPresent(row -> marks.toggle(row.code()));
    }

    void selectShown() {
        marks.addAll(shown.stream().map(PotRow::code).toList());
    }

    /** A code was scanned or typed: its pot is looked at and selected. True where there is one. */
    boolean scan(String typed) {
        ScanBack.Found found = new ScanBack(byCode).find(typed);
        if (found instanceof ScanBack.OnNone none) {
            scanned.set("");
            scanProblem.set(none.sentence());
            notFound += typed.isBlank() ? 0 : 1;
            return false;
        }
        PotRow row = ((ScanBack.OnPot) found).pot();
        boolean isNew = marks.add(row.code());
        look(row);
        scanProblem.set("");
        scanned.set(RegisterWords.scanned(row, isNew, marks.count(), filtered.contains(row), notFound));
        return true;
    }

    /** Says again where the last code led, after the field it was typed into was cleared. */
    void sayScanned(String words) {
        scanned.set(words);
    }

    /** What was said of an earlier code is over once another is begun. */
    void forgetScan() {
        scanProblem.set("");
        scanned.set("");
    }

    /** The pots that what is done concerns. */
    List<PotRow> concerned() {
        return marks.isEmpty()
                ? cursor.get().stream().toList()
                : marks.all().stream()
                        .flatMap(code -> Optional.ofNullable(byCode.get(code)).stream())
                        .toList();
    }

    void tend(What what) {
        tend(concerned(), what, writtenFor(day.get()), "");
    }

    void tendShown(What what) {
        tend(List.copyOf(shown), what, writtenFor(day.get()), "");
    }

    void tend(List<PotRow> rows, What what, Instant at, String note) {
        deeds.keep(rows.stream().map(PotRow::chosen).toList(), what, at, note, this::kept, this::takenBack);
    }

    /** The end of the day chosen, for on a day past the hour is not known any more; now for today. */
    Instant writtenFor(@Nullable LocalDate chosen) {
        Instant now = now();
        return chosen == null || chosen.equals(desk.days().date(now))
                ? now
                : chosen.plusDays(1)
                        .atStartOfDay(desk.days().zone())
                        .toInstant()
                        .minusSeconds(1);
    }

    /** What is on disk is shown at once, before the room is read again. */
    private void kept(Tended tended) {
        marks.clear();
        change(tended, PotRow::with);
    }

    private void takenBack(Tended tended) {
        change(tended, PotRow::without);
        marks.addAll(tended.events().stream().map(PotEvent::pot).toList());
    }

    private void change(Tended tended, BiFunction<PotRow, PotEvent, PotRow> change) {
        Map<String, PotEvent> byPot = new LinkedHashMap<>();
        tended.events().forEach(event -> byPot.put(event.pot(), event));
        List<PotRow> rows = new ArrayList<>(all);
        rows.replaceAll(row -> {
            PotEvent event = byPot.get(row.code());
            return event == null ? row : change.apply(row, event);
        });
        isAhead = true;
        show(rows);
    }

    private void read(RoomView room) {
        List<PotRow> rows = PotRow.ALL.of(room);
        boolean wasAhead = isAhead;
        isAhead = false;
        if (wasAhead || !rows.equals(all)) {
            show(rows);
        }
    }

    private void show(List<PotRow> rows) {
        byCode.clear();
        rows.forEach(row -> byCode.put(row.code(), row));
        Optional<PotRow> looked = cursor.get().flatMap(row -> Optional.ofNullable(byCode.get(row.code())));
        all.setAll(rows);
        marks.keepOnly(byCode.keySet());
        cursor.set(looked);
    }

    private void filter() {
        RegisterFilter filter = RegisterFilter.of(filterText.get(), kind.get());
        filtered.setPredicate(row -> filter.shows(row, marks));
    }
}
