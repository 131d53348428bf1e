package org.moultwright.ui.register;

import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.moultwright.domain.PotEvent.What;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.TendPots.Chosen;
import org.moultwright.workflow.TendPots.Tended;

/** Writes down what happened to pots, one deed at a time, and takes it back; says what became of it. */
final class RegisterDeeds {
    private final RegisterDesk desk;
    private final ReadOnlyStringWrapper done = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private boolean saving;

    RegisterDeeds(RegisterDesk desk) {
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

    /**
     * Keeps that something happened to pots.
     *
     * @param whenKept is told once it is on disk
     * @param whenTakenBack is told once it is undone
     */
    void keep(
            List<Chosen> pots,
            What what,
            Instant at,
            String note,
            Consumer<Tended> whenKept,
            Consumer<Tended> whenTakenBack) {
        if (saving) {
            return;
        }
        saving = true;
        desk.runner().<Tended>run(progress -> desk.tend().tend(pots, what, at, note), outcome -> {
            saving = false;
            if (outcome instanceof Outcome.Done<Tended> kept) {
                Tended tended = kept.value();
                desk.saveLine().saved(tended.summary().doneAt(), () -> takeBack(tended, whenTakenBack));
                say(RegisterWords.tended(tended));
                whenKept.accept(tended);
                desk.readAgain().run();
            } else if (outcome instanceof Outcome.Failed<Tended> failed) {
                refuse(String.valueOf(failed.fault().getMessage()));
            }
        });
    }

    private void takeBack(Tended tended, Consumer<Tended> whenTakenBack) {
        desk.runner()
                .<Deed.Summary>run(progress -> desk.undo().undo(tended.summary().id()), outcome -> {
                    if (outcome instanceof Outcome.Failed<Deed.Summary> failed) {
                        refuse(Texts.say("Not undone: {0}", failed.fault().getMessage()));
                    } else if (outcome instanceof Outcome.Done<Deed.Summary> undone) {
                        say(Texts.say("Taken back: {0}.", undone.value().words()));
                        whenTakenBack.accept(tended);
                        desk.readAgain().run();
                    }
                });
    }
}
