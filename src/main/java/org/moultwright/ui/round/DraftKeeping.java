package org.moultwright.ui.round;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.moultwright.task.Outcome;
import org.moultwright.task.Runner;
import org.moultwright.workflow.SheetDraft;
import org.moultwright.workflow.SheetDrafts;

/** Brings begun sheets to the disk as they are typed, aside: while one writing goes on, only the newest waits. */
final class DraftKeeping {
    private final SheetDrafts disk;
    private final Runner runner;
    private final AtomicReference<Optional<List<SheetDraft>>> newest = new AtomicReference<>(Optional.empty());
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private List<SheetDraft> handedOver;

    /** @param found what is on the disk already */
    DraftKeeping(SheetDrafts disk, Runner runner, List<SheetDraft> found) {
        this.disk = disk;
        this.runner = runner;
        this.handedOver = found;
    }

    /** Why what is typed is not on the disk, in a sentence; empty while it is. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    void keep(List<SheetDraft> drafts) {
        if (drafts.equals(handedOver)) {
            return;
        }
        handedOver = drafts;
        if (newest.getAndSet(Optional.of(drafts)).isEmpty()) {
            runner.run(
                    work -> {
                        newest.getAndSet(Optional.empty()).ifPresent(disk::keep);
                        return true;
                    },
                    this::ended);
        }
    }

    private void ended(Outcome<Boolean> outcome) {
        if (outcome instanceof Outcome.Failed<Boolean> failed) {
            problem.set(RoundWords.notKept(failed.fault()));
        } else if (outcome instanceof Outcome.Done<Boolean>) {
            problem.set("");
        }
    }
}
