package org.moultwright.ui.round;

import java.time.Instant;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableObjectValue;
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
    private final ReadOnlyObjectWrapper<Optional<OpenSheet>> open = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<FocusRequest> focus =
            new ReadOnlyObjectWrapper<>(new FocusRequest(0, new FocusRequest.Done()));
    private final TraySheets sheets;
    private final BegunSheets begun;
    private final RoundProgress progress = new RoundProgress();
    private final TrayPhotos photos;
    private final RoundList list;

    public RoundViewModel(RoundDesk desk) {
        this.desk = desk;
        this.sheets = new TraySheets(this::focus, desk.sounds());
        this.begun = new BegunSheets(desk, sheets);
        this.photos = new TrayPhotos(desk, open.getReadOnlyProperty());
        this.list = new RoundList(desk, sheets, progress, open.getReadOnlyProperty());
        desk.room().addListener((observed, before, now) -> read(now));
        desk.vocabulary().addListener((observed, before, now) -> list.show());
        read(desk.room().get());
    }

    public ObservableList<TrayLine> lines() {
        return list.lines();
    }

    /** The sheet that is open; none where there is no tray. */
    public ReadOnlyObjectProperty<Optional<OpenSheet>> openProperty() {
        return open.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty subtitleProperty() {
        return list.subtitleProperty();
    }

    public ReadOnlyStringProperty paceProperty() {
        return list.paceProperty();
    }

    /** Said once no tray is left; empty before. */
    public ReadOnlyStringProperty finishedProperty() {
        return list.finishedProperty();
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
            list.show();
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
        sheets.layBack(sheet, desk.vocabulary().get());
        begun.notSaved(sheet);
        if (isElsewhere) {
            list.show();
            problem.set(RoundWords.notSavedElsewhere(sheet.facts().tray(), fault));
        } else {
            show(Optional.of(sheet));
            focusFirstRow();
            problem.set(RoundWords.notSaved(fault));
        }
    }

    /** Takes the last deed back and lays the sheet it came from open again, filled in as it was. */
    private void takeBack(OpenSheet sheet) {
        desk.runner().<Optional<Deed.Summary>>run(work -> desk.undo().undo(), outcome -> {
            if (outcome instanceof Outcome.Failed<Optional<Deed.Summary>> failed) {
                problem.set(RoundWords.notUndone(failed.fault()));
                return;
            }
            progress.takenBack(sheet);
            sheets.layBack(sheet, desk.vocabulary().get());
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
        Optional<OpenSheet> now = sheets.stillOrFirst(before, progress::isOutOfHand);
        if (!now.equals(before)) {
            problem.set("");
            open.set(now);
        }
        list.show();
        if (before.isEmpty()) {
            // The first trays are there: the keeper can begin.
            focusFirstRow();
        }
    }

    private void show(Optional<OpenSheet> sheet) {
        Optional<OpenSheet> before = open.get();
        problem.set("");
        open.set(sheet);
        list.show(before, sheet);
    }
}
