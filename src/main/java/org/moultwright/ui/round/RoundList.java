package org.moultwright.ui.round;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableObjectValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The trays of the round as they are listed, and how far the keeper has come with them. */
final class RoundList {
    private final RoundDesk desk;
    private final TraySheets sheets;
    private final RoundProgress progress;
    private final ObservableObjectValue<Optional<OpenSheet>> open;
    private final ObservableList<TrayLine> lines = FXCollections.observableArrayList();
    /** Kept, for a wrapper nobody keeps is gone with its listeners. */
    private final ObservableList<TrayLine> linesShown = FXCollections.unmodifiableObservableList(lines);

    private final ReadOnlyStringWrapper subtitle = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper pace = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper finished = new ReadOnlyStringWrapper("");

    /** @param open the sheet that is open */
    RoundList(
            RoundDesk desk,
            TraySheets sheets,
            RoundProgress progress,
            ObservableObjectValue<Optional<OpenSheet>> open) {
        this.desk = desk;
        this.sheets = sheets;
        this.progress = progress;
        this.open = open;
    }

    ObservableList<TrayLine> lines() {
        return linesShown;
    }

    ReadOnlyStringProperty subtitleProperty() {
        return subtitle.getReadOnlyProperty();
    }

    ReadOnlyStringProperty paceProperty() {
        return pace.getReadOnlyProperty();
    }

    /** Said once no tray is left; empty before. */
    ReadOnlyStringProperty finishedProperty() {
        return finished.getReadOnlyProperty();
    }

    /** Lists every tray anew. */
    void show() {
        lines.setAll(sheets.all().stream().map(this::line).toList());
        sumUp();
    }

    /** The keeper went from one sheet to another: of hundreds of trays only these two say something else. */
    void show(Optional<OpenSheet> from, Optional<OpenSheet> to) {
        if (lines.size() != sheets.all().size()) {
            show();
            return;
        }
        from.ifPresent(this::showLine);
        to.ifPresent(this::showLine);
        sumUp();
    }

    private void showLine(OpenSheet sheet) {
        List<OpenSheet> all = sheets.all();
        for (int position = 0; position < all.size(); position++) {
            if (all.get(position).key().equals(sheet.key())) {
                lines.set(position, line(all.get(position)));
            }
        }
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
