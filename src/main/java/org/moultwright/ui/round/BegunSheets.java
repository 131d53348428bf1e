package org.moultwright.ui.round;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import org.moultwright.ui.draft.DraftKeeping;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.SheetDraft;

/**
 * The sheets that are begun and not yet saved. Each is kept on disk as it is typed, until it is saved or dropped, and
 * laid back on its tray after an interruption; one whose tray is gone waits.
 */
final class BegunSheets {
    private final RoundDesk desk;
    private final TraySheets sheets;
    private final DraftKeeping<SheetDraft> keeping;
    private final List<SheetDraft> waiting;
    private final List<OpenSheet> saving = new ArrayList<>();
    private final ReadOnlyObjectWrapper<Optional<SheetDraft>> stray = new ReadOnlyObjectWrapper<>(Optional.empty());

    BegunSheets(RoundDesk desk, TraySheets sheets) {
        this.desk = desk;
        this.sheets = sheets;
        this.waiting = new ArrayList<>(desk.begun().found());
        this.keeping = new DraftKeeping<>(desk.begun());
        sheets.whenWritten(this::written);
    }

    /** The first begun sheet whose tray is not in the room. */
    ReadOnlyObjectProperty<Optional<SheetDraft>> strayProperty() {
        return stray.getReadOnlyProperty();
    }

    ReadOnlyStringProperty problemProperty() {
        return keeping.problemProperty();
    }

    /** Reads the trays anew: what was written for one that is gone waits, what waited for one that is there is laid back. */
    void read(RoomView room) {
        List<OpenSheet> before = List.copyOf(sheets.all());
        sheets.read(room);
        before.stream().filter(sheet -> sheets.find(sheet.key()).isEmpty()).forEach(this::wait);
        List.copyOf(waiting).forEach(this::layBack);
        showStray();
        keep();
    }

    void saving(OpenSheet sheet) {
        saving.add(sheet);
    }

    /** It is on disk as a deed. */
    void saved(OpenSheet sheet) {
        saving.remove(sheet);
        keep();
    }

    /** It could not be saved, and lies in its place again; or waits, where that is gone. */
    void notSaved(OpenSheet sheet) {
        saving.remove(sheet);
        if (sheets.find(sheet.key()).isEmpty()) {
            wait(sheet);
        }
        showStray();
        keep();
    }

    void dropStray() {
        stray.get().ifPresent(waiting::remove);
        showStray();
        keep();
    }

    /** Brings what is typed now to the disk. */
    void keep() {
        keeping.keep(Stream.concat(
                        waiting.stream(),
                        Stream.concat(saving.stream(), sheets.all().stream())
                                .flatMap(sheet -> BegunSheet.draft(sheet.fields()).stream()))
                .toList());
    }

    private void written(SheetViewModel fields) {
        if (fields.isBlank()) {
            fields.basisProperty().set(Optional.empty());
        } else if (fields.basisProperty().get().isEmpty()) {
            Instant now = desk.clock().instant();
            TrayFacts facts = fields.factsProperty().get();
            fields.basisProperty().set(Optional.of(new SheetDraft.Basis(now, facts.alive(), facts.lastWritten())));
        }
        keep();
    }

    private void wait(OpenSheet sheet) {
        BegunSheet.draft(sheet.fields()).ifPresent(waiting::add);
    }

    /** It waits until all of it is on the sheet: whatever is kept meanwhile holds it once more, never less. */
    private void layBack(SheetDraft draft) {
        sheets.find(TrayFacts.key(draft.brood(), draft.tray())).ifPresent(sheet -> {
            BegunSheet.write(draft, sheet.fields(), desk.vocabulary().get());
            waiting.remove(draft);
        });
    }

    /** Before the room was read, every tray seems gone. */
    private void showStray() {
        stray.set(
                desk.room().get().equals(RoomView.EMPTY)
                        ? Optional.empty()
                        : waiting.stream().findFirst());
    }
}
