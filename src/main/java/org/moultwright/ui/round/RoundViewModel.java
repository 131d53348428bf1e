package org.moultwright.ui.round;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableObjectValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.task.Outcome;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.Balance;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.RoundSheet;
import org.moultwright.workflow.TrayView;

/** The round: the trays in shelf order, one sheet open, saved one after another. */
final class RoundViewModel {
    private final RoundDesk desk;
    private final ObservableList<TrayLine> lines = FXCollections.observableArrayList();
    /** Kept, for a wrapper nobody keeps is gone with its listeners. */
    private final ObservableList<TrayLine> linesShown = FXCollections.unmodifiableObservableList(lines);

    private final ReadOnlyObjectWrapper<Optional<OpenSheet>> open = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper pace = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<FocusRequest> focus =
            new ReadOnlyObjectWrapper<>(new FocusRequest(0, new FocusRequest.Done()));
    private final ReadOnlyStringWrapper finished = new ReadOnlyStringWrapper("");
    private final List<OpenSheet> order = new ArrayList<>();
    private final Map<String, Instant> savedAt = new HashMap<>();
    private final List<Instant> saves = new ArrayList<>();
    private boolean saving;

    public RoundViewModel(RoundDesk desk) {
        this.desk = desk;
        desk.room().addListener((observed, before, now) -> read(now));
        desk.vocabulary().addListener((observed, before, now) -> list());
        read(desk.room().get());
    }

    public ObservableList<TrayLine> lines() {
        return linesShown;
    }

    /** The sheet that is open; none where there is no tray. */
    public ReadOnlyObjectProperty<Optional<OpenSheet>> openProperty() {
        return open.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty subtitleProperty() {
        return subtitle.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty paceProperty() {
        return pace.getReadOnlyProperty();
    }

    /** Said once no tray is left; empty before. */
    public ReadOnlyStringProperty finishedProperty() {
        return finished.getReadOnlyProperty();
    }

    /** Why the sheet could not be saved, in a sentence; empty when nothing stands in the way. */
    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<FocusRequest> focusProperty() {
        return focus.getReadOnlyProperty();
    }

    /** The keeper's days, for the heading over the last counts. */
    public DayWords days() {
        return desk.days();
    }

    public ObservableObjectValue<Vocabulary> vocabularyProperty() {
        return desk.vocabulary();
    }

    /** Opens the sheet of the tray at a place of the list. */
    void open(int position) {
        show(Optional.of(order.get(position)));
        focusFirstRow();
    }

    /** Opens the tray before or after the open one. */
    void step(int by) {
        int position = open.get().map(sheet -> order.indexOf(sheet) + by).orElse(-1);
        if (position >= 0 && position < order.size()) {
            open(position);
        }
    }

    /** Puts the keeper's hands on the first row that may hold animals. */
    void focusFirstRow() {
        open.get()
                .ifPresent(sheet ->
                        focus(new FocusRequest.Row(sheet.fields().firstRow().stage())));
    }

    void focus(FocusRequest.Target target) {
        focus.set(new FocusRequest(focus.get().serial() + 1, target));
    }

    /** Ends the open sheet: saves it, or says what it still needs. */
    void done() {
        open.get().filter(sheet -> !saving).ifPresent(this::done);
    }

    /** Ends the open sheet with what explains its balance. */
    void explain(Balance.Answer answer) {
        open.get().filter(sheet -> !saving).ifPresent(sheet -> save(sheet, Optional.of(answer)));
    }

    /** Goes back to counting. */
    void recount() {
        open.get().ifPresent(sheet -> sheet.keys().close());
        focusFirstRow();
    }

    private void done(OpenSheet sheet) {
        SheetViewModel fields = sheet.fields();
        problem.set(RoundWords.obstacle(fields));
        if (!problem.get().isEmpty()) {
            return;
        }
        if (fields.balanceProperty().get().holds()) {
            save(sheet, Optional.empty());
        } else {
            sheet.keys().ask(new Prompt.Explanation());
        }
    }

    private void save(OpenSheet sheet, Optional<Balance.Answer> answer) {
        RoundSheet filled = sheet.fields().sheet(desk.clock().instant());
        saving = true;
        desk.runner().<Deed.Summary>run(progress -> desk.record().save(filled, answer), ended -> saved(sheet, ended));
    }

    private void saved(OpenSheet sheet, Outcome<Deed.Summary> outcome) {
        saving = false;
        if (outcome instanceof Outcome.Done<Deed.Summary> done) {
            Instant at = done.value().doneAt();
            sheet.keys().close();
            savedAt.put(sheet.key(), at);
            saves.add(at);
            OpenSheet fresh = newSheet(sheet.fields().factsProperty().get());
            order.replaceAll(other -> other.key().equals(fresh.key()) ? fresh : other);
            desk.saveLine().saved(at, () -> takeBack(sheet));
            show(next(fresh));
            focusFirstRow();
            desk.readAgain().run();
        } else if (outcome instanceof Outcome.Failed<Deed.Summary> failed) {
            problem.set(RoundWords.notSaved(failed.fault()));
        }
    }

    /** Takes the last deed back and lays the sheet it came from open again, filled in as it was. */
    private void takeBack(OpenSheet sheet) {
        desk.runner().<Optional<Deed.Summary>>run(progress -> desk.undo().undo(), outcome -> {
            if (outcome instanceof Outcome.Failed<Optional<Deed.Summary>> failed) {
                problem.set(RoundWords.notUndone(failed.fault()));
                return;
            }
            savedAt.remove(sheet.key());
            order.replaceAll(other -> other.key().equals(sheet.key()) ? sheet : other);
            show(Optional.of(sheet));
            focusFirstRow();
            desk.readAgain().run();
        });
    }

    private void read(RoomView room) {
        savedAt.values().removeIf(at -> !room.now().isBefore(at));
        List<OpenSheet> trays = new ArrayList<>();
        for (BroodView brood : room.broods()) {
            brood.trays().stream()
                    .filter(tray -> tray.alive() > 0)
                    .forEach(tray -> trays.add(sheet(TrayFacts.of(room.now(), brood, tray))));
        }
        order.clear();
        order.addAll(trays);
        show(open.get()
                .filter(order::contains)
                .or(() -> order.stream().filter(sheet -> !isDone(sheet)).findFirst())
                .or(() -> order.stream().findFirst()));
    }

    /** The sheet of a tray as it was left, with what is newly known. */
    private OpenSheet sheet(TrayFacts facts) {
        Optional<OpenSheet> known =
                order.stream().filter(sheet -> sheet.key().equals(facts.key())).findFirst();
        known.ifPresent(sheet -> sheet.fields().show(facts));
        return known.orElseGet(() -> newSheet(facts));
    }

    private OpenSheet newSheet(TrayFacts facts) {
        SheetViewModel fields = new SheetViewModel(facts);
        return new OpenSheet(fields, new SheetKeys(fields, this::focus));
    }

    private Optional<OpenSheet> next(OpenSheet after) {
        int position = Math.max(0, order.indexOf(after));
        List<OpenSheet> inTurn = new ArrayList<>(order.subList(position, order.size()));
        inTurn.addAll(order.subList(0, position));
        return inTurn.stream().filter(sheet -> !isDone(sheet)).findFirst().or(() -> Optional.of(after));
    }

    private boolean isDone(OpenSheet sheet) {
        return savedAt.containsKey(sheet.key()) || sheet.facts().view().due() == TrayView.Due.DONE;
    }

    private void show(Optional<OpenSheet> sheet) {
        problem.set("");
        open.set(sheet);
        list();
    }

    private void list() {
        lines.setAll(order.stream().map(this::line).toList());
        int left = (int) order.stream().filter(sheet -> !isDone(sheet)).count();
        Instant now = desk.room().get().now();
        subtitle.set(order.isEmpty() ? "" : RoundWords.subtitle(desk.days(), now, left));
        finished.set(left == 0 && !order.isEmpty() ? RoundWords.finished(order.size()) : "");
        pace.set(RoundWords.pace(saves, left));
    }

    private TrayLine line(OpenSheet sheet) {
        boolean isOpen = open.get().filter(sheet::equals).isPresent();
        return RoundWords.line(
                sheet.facts(), isDone(sheet), isOpen, desk.vocabulary().get());
    }
}
