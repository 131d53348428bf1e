package org.moultwright.ui.round;

import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javafx.beans.InvalidationListener;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.collections.ObservableSet;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Look;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.Balance;
import org.moultwright.workflow.RoundSheet;
import org.moultwright.workflow.SheetDraft;

/** One tray's sheet as it is being filled in. It outlives every look at another tray or screen. */
final class SheetViewModel {
    private final ReadOnlyObjectWrapper<TrayFacts> facts;
    private final List<StageRow> rows;
    private final ObservableList<RoundSheet.Loss> losses = FXCollections.observableArrayList();
    private final ObjectProperty<Optional<RoundSheet.Mould>> mould = new SimpleObjectProperty<>(Optional.empty());
    private final ObservableSet<String> care = FXCollections.observableSet();
    private final StringProperty note = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Balance> balance;
    private final ObjectProperty<Optional<SheetDraft.Basis>> basis = new SimpleObjectProperty<>(Optional.empty());

    SheetViewModel(TrayFacts known) {
        facts = new ReadOnlyObjectWrapper<>(known);
        rows = known.stages().stream().map(StageRow::new).toList();
        balance = new ReadOnlyObjectWrapper<>(new Balance(known.alive(), OptionalInt.empty(), 0));
        InvalidationListener rebalance = changed -> balance.set(computeBalance());
        rows.forEach(row -> row.textProperty().addListener(rebalance));
        losses.addListener(rebalance);
        show(known);
    }

    /** Takes in what is newly known of the tray; what the keeper wrote stays. */
    void show(TrayFacts known) {
        facts.set(known);
        rows.forEach(row -> row.show(known.last(row.stage()), known.expected(row.stage())));
        balance.set(computeBalance());
    }

    public ReadOnlyObjectProperty<TrayFacts> factsProperty() {
        return facts.getReadOnlyProperty();
    }

    public List<StageRow> rows() {
        return rows;
    }

    public ObservableList<RoundSheet.Loss> losses() {
        return losses;
    }

    public ObjectProperty<Optional<RoundSheet.Mould>> mouldProperty() {
        return mould;
    }

    /** What was done for the tray, in the words of {@link org.moultwright.domain.CareNote}. */
    public ObservableSet<String> care() {
        return care;
    }

    public StringProperty noteProperty() {
        return note;
    }

    public ReadOnlyObjectProperty<Balance> balanceProperty() {
        return balance.getReadOnlyProperty();
    }

    /** What stood of the tray when the sheet was begun; empty while nothing is written. */
    public ObjectProperty<Optional<SheetDraft.Basis>> basisProperty() {
        return basis;
    }

    /** Has somebody told whenever anything is written, or taken back, on the sheet. */
    void whenWritten(Runnable told) {
        InvalidationListener written = changed -> told.run();
        rows.forEach(row -> row.textProperty().addListener(written));
        List.of(losses, mould, care, note).forEach(part -> part.addListener(written));
    }

    /** What it was begun upon, where that does not stand any more. */
    Optional<SheetDraft.Basis> outdated() {
        TrayFacts known = facts.get();
        return basis.get().filter(begun -> !begun.stillStands(known.alive(), known.lastWritten()));
    }

    /** Fills the rows as a look would that found everything as expected. */
    void writeAsExpected() {
        rows.forEach(StageRow::writeAsExpected);
    }

    /** Takes animals out as dead, adding to those of the same stage and cause. */
    void take(Stage stage, Cause cause, int count) {
        int before = losses.stream()
                .filter(loss -> loss.stage() == stage && loss.cause().equals(cause))
                .mapToInt(RoundSheet.Loss::count)
                .sum();
        losses.removeIf(loss -> loss.stage() == stage && loss.cause().equals(cause));
        losses.add(new RoundSheet.Loss(stage, cause, before + count));
    }

    /** Mould just found: a speck, and removed, unless more is said. */
    void mouldAt(String where) {
        tellMould(new RoundSheet.Mould(
                where,
                KeyedWord.MOULD_EXTENT.get(0).text(),
                KeyedWord.MOULD_ACTION.get(0).text()));
    }

    /** Says more of the mould found. */
    void tellMould(RoundSheet.Mould found) {
        mould.set(Optional.of(found));
    }

    void withdrawMould() {
        mould.set(Optional.empty());
    }

    void toggleCare(String what) {
        if (!care.remove(what)) {
            care.add(what);
        }
    }

    /** The row a keeper begins with: the first that may hold animals. */
    StageRow firstRow() {
        return rows.stream().filter(StageRow::mayHoldAnimals).findFirst().orElse(rows.get(0));
    }

    Optional<StageRow> row(Stage stage) {
        return rows.stream().filter(row -> row.stage() == stage).findFirst();
    }

    Optional<StageRow> rowAfter(StageRow row) {
        int next = rows.indexOf(row) + 1;
        return next < rows.size() ? Optional.of(rows.get(next)) : Optional.empty();
    }

    Optional<StageRow> rowBefore(StageRow row) {
        int before = rows.indexOf(row) - 1;
        return before >= 0 ? Optional.of(rows.get(before)) : Optional.empty();
    }

    boolean isBlank() {
        return rows.stream().allMatch(StageRow::isBlank)
                && losses.isEmpty()
                && mould.get().isEmpty()
                && care.isEmpty()
                && note.get().isBlank();
    }

    /** The sheet as filled in, for an instant at which the keeper looked. */
    RoundSheet sheet(Instant at) {
        return new RoundSheet(
                facts.get().brood(), facts.get().tray(), at, looks(), losses, mould.get(), care, note.get());
    }

    /** Where some were counted in full, the rows left empty hold none; the keeper sees that in the balance. */
    private Map<Stage, Look> looks() {
        Map<Stage, Look> looks = new EnumMap<>(Stage.class);
        rows.forEach(row -> looks.put(row.stage(), row.look()));
        return looks;
    }

    private Balance computeBalance() {
        RoundSheet soFar = sheet(facts.get().now());
        return new Balance(facts.get().alive(), soFar.counted(), soFar.taken());
    }
}
