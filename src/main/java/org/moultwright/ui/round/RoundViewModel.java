package org.moultwright.ui.round;

import java.time.Instant;
import java.util.List;
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
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.RoundSheet;

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
    private final TraySheets sheets;
    private final BegunSheets begun;
    private final RoundProgress progress = new RoundProgress();
    private final TrayPhotos photos;

    public RoundViewModel(RoundDesk desk) {
        this.desk = desk;
        this.sheets = new TraySheets(this::focus, desk.sounds());
        this.begun = new BegunSheets(desk, sheets);
        this.photos = new TrayPhotos(desk, open.getReadOnlyProperty());
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

    /** The sheets begun and not saved. */
    BegunSheets begun() {
        return begun;
    }

    /** The photos of the open sheet's tray. */
    TrayPhotos photos() {
        return photos;
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
        show(Optional.of(sheets.all().get(position)));
        focusFirstRow();
    }

    /** Opens the tray before or after the open one. */
    void step(int by) {
        int position = open.get().map(sheet -> sheets.all().indexOf(sheet) + by).orElse(-1);
        if (position >= 0 && position < sheets.all().size()) {
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
        open.get().ifPresent(this::done);
    }

    /** Ends the open sheet with what explains its balance. */
    void explain(Balance.Answer answer) {
        open.get().ifPresent(sheet -> save(sheet, Optional.of(answer)));
    }

    /** Goes back to counting. */
    void recount() {
        open.get().ifPresent(sheet -> sheet.keys().close());
        focusFirstRow();
    }

    /** Throws away what is written on the open sheet. */
    void drop() {
        open.get().ifPresent(sheet -> {
            OpenSheet fresh = sheets.renew(sheet);
            begun.keep();
            show(Optional.of(fresh));
            focusFirstRow();
        });
    }

    private void done(OpenSheet sheet) {
        SheetViewModel fields = sheet.fields();
        problem.set(progress.isSaving(sheet) ? RoundWords.STILL_SAVING : RoundWords.obstacle(fields));
        if (!problem.get().isEmpty()) {
            return;
        }
        if (fields.balanceProperty().get().holds()) {
            save(sheet, Optional.empty());
        } else {
            sheet.keys().ask(new Prompt.Explanation());
        }
    }

    /** The next tray is laid open at once: whatever is typed from here on is written there, and stays. */
    private void save(OpenSheet sheet, Optional<Balance.Answer> answer) {
        RoundSheet filled = sheet.fields().sheet(desk.clock().instant());
        sheet.keys().close();
        progress.begin(sheet);
        begun.saving(sheet);
        show(Optional.of(sheets.next(sheets.renew(sheet), progress::isOutOfHand)));
        focusFirstRow();
        desk.runner().<Deed.Summary>run(work -> desk.record().save(filled, answer), ended -> saved(sheet, ended));
    }

    private void saved(OpenSheet sheet, Outcome<Deed.Summary> outcome) {
        if (outcome instanceof Outcome.Done<Deed.Summary> done) {
            Instant at = done.value().doneAt();
            progress.saved(sheet, at);
            begun.saved(sheet);
            desk.saveLine().saved(at, () -> takeBack(sheet));
            list();
            desk.readAgain().run();
        } else if (outcome instanceof Outcome.Failed<Deed.Summary> failed) {
            progress.notSaved(sheet);
            notSaved(sheet, failed.fault());
        }
    }

    /** The sheet is opened again, unless the keeper is in the midst of another. */
    private void notSaved(OpenSheet sheet, RuntimeException fault) {
        boolean isElsewhere = open.get()
                .filter(other ->
                        !other.key().equals(sheet.key()) && !other.fields().isBlank())
                .isPresent();
        layBack(sheet);
        begun.notSaved(sheet);
        if (isElsewhere) {
            list();
            problem.set(RoundWords.notSavedElsewhere(sheet.facts().tray(), fault));
        } else {
            show(Optional.of(sheet));
            focusFirstRow();
            problem.set(RoundWords.notSaved(fault));
        }
    }

    /** Lays a sheet back in its place, with what was written on the one that lay there. */
    private void layBack(OpenSheet sheet) {
        sheets.find(sheet.key()).ifPresent(laid -> {
            sheet.fields().show(laid.facts());
            new LaterSheet(laid.fields(), desk.vocabulary().get()).writeInto(sheet.fields());
        });
        sheets.replace(sheet);
    }

    /** Takes the last deed back and lays the sheet it came from open again, filled in as it was. */
    private void takeBack(OpenSheet sheet) {
        desk.runner().<Optional<Deed.Summary>>run(work -> desk.undo().undo(), outcome -> {
            if (outcome instanceof Outcome.Failed<Optional<Deed.Summary>> failed) {
                problem.set(RoundWords.notUndone(failed.fault()));
                return;
            }
            progress.takenBack(sheet);
            layBack(sheet);
            begun.keep();
            show(Optional.of(sheet));
            focusFirstRow();
            desk.readAgain().run();
        });
    }

    private void read(RoomView room) {
        progress.read(room.now());
        begun.read(room);
        Optional<OpenSheet> before = open.get();
        Optional<OpenSheet> now = before.filter(sheets.all()::contains)
                .or(() -> sheets.all().stream()
                        .filter(sheet -> !sheet.fields().isBlank())
                        .findFirst())
                .or(() -> sheets.all().stream()
                        .filter(sheet -> !progress.isOutOfHand(sheet))
                        .findFirst())
                .or(() -> sheets.all().stream().findFirst());
        if (!now.equals(before)) {
            problem.set("");
            open.set(now);
        }
        list();
        if (before.isEmpty()) {
            // The first trays are there: the keeper can begin.
            focusFirstRow();
        }
    }

    private void show(Optional<OpenSheet> sheet) {
        Optional<OpenSheet> before = open.get();
        problem.set("");
        open.set(sheet);
        if (lines.size() != sheets.all().size()) {
            list();
            return;
        }
        before.ifPresent(this::listAgain);
        sheet.ifPresent(this::listAgain);
        sumUp();
    }

    /** Of hundreds of trays only those the keeper went from and to say something else. */
    private void listAgain(OpenSheet sheet) {
        List<OpenSheet> all = sheets.all();
        for (int position = 0; position < all.size(); position++) {
            if (all.get(position).key().equals(sheet.key())) {
                lines.set(position, line(all.get(position)));
            }
        }
    }

    private void list() {
        lines.setAll(sheets.all().stream().map(this::line).toList());
        sumUp();
    }

    private void sumUp() {
        List<OpenSheet> all = sheets.all();
        int left =
                (int) all.stream().filter(sheet -> !progress.isOutOfHand(sheet)).count();
        boolean isFinished = !all.isEmpty() && all.stream().allMatch(progress::isDone);
        Instant now = desk.room().get().now();
        subtitle.set(all.isEmpty() ? "" : RoundWords.subtitle(desk.days(), now, left));
        finished.set(isFinished ? RoundWords.finished(all.size()) : "");
        pace.set(RoundWords.pace(progress.saves(), left));
    }

    private TrayLine line(OpenSheet sheet) {
        boolean isOpen = open.get().filter(sheet::equals).isPresent();
        TrayLine line = RoundWords.line(
                sheet.facts(), progress.isDone(sheet), isOpen, desk.vocabulary().get());
        if (progress.isSaving(sheet)) {
            return line.saving();
        }
        return isOpen || sheet.fields().isBlank() ? line : line.begun();
    }
}
