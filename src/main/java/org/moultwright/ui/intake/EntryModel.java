package org.moultwright.ui.intake;

import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.workflow.Deed;

/** What every entry of the climate by hand has: where, what is wrong with it, and that it is kept, to be undone. */
final class EntryModel {
    private final IntakeDesk desk;
    private final ObservableList<String> containers = FXCollections.observableArrayList();
    private final StringProperty container = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper news = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper undoable = new ReadOnlyBooleanWrapper(false);
    private Optional<UUID> kept = Optional.empty();

    EntryModel(IntakeDesk desk) {
        this.desk = desk;
        Containers known = Containers.of(desk.room().get(), desk.clock().instant());
        containers.setAll(known.codes());
        container.set(known.usual().orElse(""));
    }

    ObservableList<String> containers() {
        return containers;
    }

    StringProperty containerProperty() {
        return container;
    }

    /** Why it is not kept, and what to do; empty while nothing is wrong. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** What was kept last. */
    ReadOnlyStringProperty newsProperty() {
        return news.getReadOnlyProperty();
    }

    ReadOnlyBooleanProperty undoableProperty() {
        return undoable.getReadOnlyProperty();
    }

    void refuse(String sentence) {
        problem.set(sentence);
        news.set("");
        undoable.set(false);
    }

    /**
     * Keeps it aside, and says so once it is on disk.
     *
     * @param words asked for aside, before it is kept
     */
    void keep(Supplier<Deed.Summary> keeping, Supplier<String> words, Runnable afterwards) {
        problem.set("");
        desk.keeper().<Kept>run(progress -> Kept.of(words, keeping), outcome -> {
            if (outcome instanceof Outcome.Done<Kept> done) {
                kept = Optional.of(done.value().deed().id());
                news.set(done.value().words());
                undoable.set(true);
                afterwards.run();
                desk.readAgain().run();
            } else if (outcome instanceof Outcome.Failed<Kept> failed) {
                refuse(Texts.say("It is not kept: {0}", failed.fault().getMessage()));
            }
        });
    }

    /** Takes back what was kept here last, unless something else was kept since. */
    void undo() {
        Optional<UUID> wanted = kept;
        desk.keeper()
                .<Boolean>run(progress -> isLatest(wanted) && desk.undo().undo().isPresent(), outcome -> {
                    boolean isUndone = outcome instanceof Outcome.Done<Boolean> done && done.value();
                    undoable.set(false);
                    if (isUndone) {
                        news.set(Texts.say("Taken back."));
                        desk.readAgain().run();
                    } else {
                        refuse(Texts.say("It was not taken back: something else was kept since. Undo that first."));
                    }
                });
    }

    private boolean isLatest(Optional<UUID> wanted) {
        return wanted.isPresent() && desk.undo().next().map(Deed.Summary::id).equals(wanted);
    }

    /** What was kept, and what is said of it. */
    private record Kept(Deed.Summary deed, String words) {
        static Kept of(Supplier<String> words, Supplier<Deed.Summary> keeping) {
            String said = words.get();
            return new Kept(keeping.get(), said);
        }
    }
}
