package org.moultwright.ui.deeds;

import java.util.List;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.moultwright.language.Texts;
import org.moultwright.task.Outcome;
import org.moultwright.workflow.Deed;

/** The deeds that can be taken back, newest first. */
final class DeedsViewModel {
    /** So far back a keeper remembers what was meant. */
    static final int MOST = 50;

    private final DeedsDesk desk;
    private final ObservableList<DeedLine> lines = FXCollections.observableArrayList();
    /** Kept, for a wrapper nobody keeps is gone with its listeners. */
    private final ObservableList<DeedLine> linesShown = FXCollections.unmodifiableObservableList(lines);

    private final ReadOnlyStringWrapper news = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
    private boolean takingBack;

    DeedsViewModel(DeedsDesk desk) {
        this.desk = desk;
    }

    ObservableList<DeedLine> lines() {
        return linesShown;
    }

    /** What was taken back last; empty before. */
    ReadOnlyStringProperty newsProperty() {
        return news.getReadOnlyProperty();
    }

    /** What could not be done, and why. */
    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** Begins anew: what was said before is not said any more. */
    void open() {
        news.set("");
        problem.set("");
        read();
    }

    /** Takes a deed back, one at a time. */
    void takeBack(DeedLine line) {
        if (takingBack) {
            return;
        }
        takingBack = true;
        desk.runner().<Deed.Summary>run(progress -> desk.undo().undo(line.id()), outcome -> {
            takingBack = false;
            if (outcome instanceof Outcome.Done<Deed.Summary> done) {
                problem.set("");
                news.set(Texts.say("Taken back: {0}.", done.value().words()));
                desk.whenTakenBack().run();
            } else if (outcome instanceof Outcome.Failed<Deed.Summary> failed) {
                news.set("");
                problem.set(Texts.say("Not taken back. {0}", failed.fault().getMessage()));
            }
            read();
        });
    }

    private void read() {
        desk.runner().<List<Deed.Summary>>run(progress -> desk.undo().latest(MOST), outcome -> {
            if (outcome instanceof Outcome.Done<List<Deed.Summary>> done) {
                lines.setAll(done.value().stream()
                        .map(deed -> DeedLine.of(deed, desk.days()))
                        .toList());
            } else if (outcome instanceof Outcome.Failed<List<Deed.Summary>> failed) {
                problem.set(String.valueOf(failed.fault().getMessage()));
            }
        });
    }
}
