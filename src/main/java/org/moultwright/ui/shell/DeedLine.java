package org.moultwright.ui.shell;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.task.Runner;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.UndoDeed;

/** Keeps what is done on a screen, one deed at a time, says so, and takes it back. */
public final class DeedLine {
    private final Runner runner;
    private final UndoDeed undo;
    private final SaveLine saveLine;
    private final Runnable readAgain;
    private final ReadOnlyStringWrapper done = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private boolean saving;

    /**
     * @param runner keeps aside
     * @param undo takes the last deed back
     * @param saveLine is told what was saved
     * @param readAgain asks for the room to be read anew
     */
    public DeedLine(Runner runner, UndoDeed undo, SaveLine saveLine, Runnable readAgain) {
        this.runner = runner;
        this.undo = undo;
        this.saveLine = saveLine;
        this.readAgain = readAgain;
    }

    /** What was done last. */
    public ReadOnlyStringProperty doneProperty() {
        return done.getReadOnlyProperty();
    }

    /** What could not be done, and why. */
    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** Says what was done. */
    public void say(String sentence) {
        problem.set("");
        done.set(sentence);
    }

    /** Says what could not be done, and why. */
    public void refuse(String sentence) {
        done.set("");
        problem.set(sentence);
    }

    /** Keeps a deed aside, and says so once it is on disk. */
    public void keep(Supplier<Deed.Summary> keeping, Runnable whenKept) {
        if (saving) {
            return;
        }
        saving = true;
        runner.<Deed.Summary>run(progress -> keeping.get(), outcome -> {
            saving = false;
            if (outcome instanceof Outcome.Done<Deed.Summary> kept) {
                saveLine.saved(kept.value().doneAt(), this::takeBack);
                say(kept.value().words() + ".");
                whenKept.run();
                readAgain.run();
            } else if (outcome instanceof Outcome.Failed<Deed.Summary> failed) {
                refuse(String.valueOf(failed.fault().getMessage()));
                // What cannot be may rest on what somebody else did meanwhile.
                if (failed.fault() instanceof IllegalArgumentException) {
                    readAgain.run();
                }
            }
        });
    }

    private void takeBack() {
        runner.<Optional<Deed.Summary>>run(progress -> undo.undo(), outcome -> {
            if (outcome instanceof Outcome.Failed<Optional<Deed.Summary>> failed) {
                refuse(Texts.say("Not undone: {0}", failed.fault().getMessage()));
            } else if (outcome instanceof Outcome.Done<Optional<Deed.Summary>> undone) {
                say(undone.value()
                        .map(deed -> Texts.say("Taken back: {0}.", deed.words()))
                        .orElse(Texts.say("There was nothing to take back.")));
                readAgain.run();
            }
        });
    }
}
