package org.moultwright.ui.shelf;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.ShelfAt;

/** Something to be done to the shelf, half filled in. */
abstract sealed class ShelfForm permits MoveForm, SplitForm, MergeForm, AddForm {
    private final String title;
    private final String verb;
    private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

    ShelfForm(String title, String verb) {
        this.title = title;
        this.verb = verb;
    }

    final String title() {
        return title;
    }

    /** The word on the button that does it. */
    final String verb() {
        return verb;
    }

    /** Why it cannot be done as it is filled in; empty while nothing is wrong. */
    final ReadOnlyStringProperty problemProperty() {
        return problem.getReadOnlyProperty();
    }

    /** The shelf was read anew while it is open. */
    void see(ShelfAt shelf) {}

    /** What is to be kept; empty where something is wrong, which is then said. */
    abstract Optional<Supplier<Deed.Summary>> filledIn();

    final Optional<Supplier<Deed.Summary>> refuse(String sentence) {
        problem.set(sentence);
        return Optional.empty();
    }

    final Optional<Supplier<Deed.Summary>> accept(Supplier<Deed.Summary> keeping) {
        problem.set("");
        return Optional.of(keeping);
    }
}
