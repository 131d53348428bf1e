package org.moultwright.ui.draft;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.task.Runner;
import org.moultwright.workflow.Drafts;

/**
 * Brings what is begun to the disk as it is typed, aside: while one writing goes on, only the newest waits.
 *
 * @param <T> what is begun
 */
public final class DraftKeeping<T> {
    private final Drafts<T> disk;
    private final Runner runner;
    private final AtomicReference<Optional<List<T>>> newest = new AtomicReference<>(Optional.empty());
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private List<T> handedOver;

    /** Keeps on from what was found on the disk. */
    public DraftKeeping(BegunDesk<T> desk) {
        this.disk = desk.drafts();
        this.runner = desk.runner();
        this.handedOver = desk.found();
    }

    /** Why what is typed is not on the disk, in a sentence; empty while it is. */
    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** These are all that is begun now. */
    public void keep(List<T> drafts) {
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
            problem.set(Texts.say(
                    "What you type is not on disk until it is saved: {0}",
                    failed.fault().getMessage()));
        } else if (outcome instanceof Outcome.Done<Boolean>) {
            problem.set("");
        }
    }
}
