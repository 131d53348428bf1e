package org.moultwright.ui.shelf;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.moultwright.task.Outcome;
import org.moultwright.workflow.Deed;

/** Keeps what is done to the shelf, one deed at a time, and takes it back. */
final class ShelfDeeds {
    private final ShelfDesk desk;
    private final ReadOnlyStringWrapper done = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private boolean saving;

    ShelfDeeds(ShelfDesk desk) {
        this.desk = desk;
    }

    /** What was done last. */
    ReadOnlyStringProperty doneProperty() {
        return done.getReadOnlyProperty();
    }

    /** What could not be done, and why. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    void say(String sentence) {
        problem.set("");
        done.set(sentence);
    }

    void refuse(String sentence) {
        done.set("");
        problem.set(sentence);
    }

    /** Keeps a deed aside, and says so once it is on disk. */
    void keep(Supplier<Deed.Summary> keeping, Runnable whenKept) {
        if (saving) {
            return;
        }
        saving = true;
        desk.runner().<Deed.Summary>run(progress -> keeping.get(), outcome -> {
            saving = false;
            if (outcome instanceof Outcome.Done<Deed.Summary> kept) {
                desk.saveLine().saved(kept.value().doneAt(), this::takeBack);
                say(kept.value().words() + ".");
                whenKept.run();
                desk.readAgain().run();
            } else if (outcome instanceof Outcome.Failed<Deed.Summary> failed) {
                refuse(String.valueOf(failed.fault().getMessage()));
            }
        });
    }

    private void takeBack() {
        desk.runner().<Optional<Deed.Summary>>run(progress -> desk.undo().undo(), outcome -> {
            if (outcome instanceof Outcome.Failed<Optional<Deed.Summary>> failed) {
                refuse("Not undone: " + failed.fault().getMessage());
            } else if (outcome instanceof Outcome.Done<Optional<Deed.Summary>> undone) {
                say(undone.value()
                        .map(deed -> "Taken back: " + deed.words() + ".")
                        .orElse("There was nothing to take back."));
                desk.readAgain().run();
            }
        });
    }
}
