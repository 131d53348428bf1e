package org.moultwright.ui.label;

import java.util.List;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** What was last said of labels: something done, or something gone wrong, each in a sentence. */
public final class LabelNews {
    private final ReadOnlyStringWrapper done = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

    public ReadOnlyStringProperty doneProperty() {
        return done.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** Calls back whenever something is said. */
    public void whenTold(Runnable action) {
        List.of(done, problem)
                .forEach(told -> told.addListener((observed, before, now) -> {
                    if (!now.isEmpty()) {
                        action.run();
                    }
                }));
    }

    public void done(String sentence) {
        problem.set("");
        done.set(sentence);
    }

    /** Why it did not go; empty where nothing is wrong any more. What went before is told no longer beside it. */
    public void failed(String sentence) {
        problem.set(sentence);
        if (!sentence.isEmpty()) {
            done.set("");
        }
    }

    public void failed(RuntimeException fault, String what) {
        failed(LabelWords.fault(fault, what));
    }

    /** Something is being written: what was said of the time before is over. */
    public void pass() {
        done.set("");
    }
}
