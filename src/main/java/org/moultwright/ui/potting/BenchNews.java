package org.moultwright.ui.potting;

import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** What the bench last said: something done, or something gone wrong, each in a sentence. */
final class BenchNews {
    private final ReadOnlyStringWrapper done = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

    ReadOnlyStringProperty doneProperty() {
        return done.getReadOnlyProperty();
    }

    ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    void done(String sentence) {
        problem.set("");
        done.set(sentence);
    }

    void failed(String sentence) {
        problem.set(sentence);
    }

    void failed(RuntimeException fault, String what) {
        failed(PottingWords.fault(fault, what));
    }

    /** Something is being written: what was said of the time before is over. */
    void pass() {
        done.set("");
    }
}
