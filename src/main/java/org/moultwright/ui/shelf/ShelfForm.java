package org.moultwright.ui.shelf;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.Observable;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.ShelfAt;

/** Something to be done to the shelf, half filled in. */
abstract sealed class ShelfForm permits MoveForm, SplitForm, MergeForm, AddForm {
    private final String title;
    private final String verb;
    private final ReadOnlyObjectWrapper<Optional<Refusal>> refusal = new ReadOnlyObjectWrapper<>(Optional.empty());

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

    /** What is wrong with the value of a field; empty while nothing is. */
    final ObservableValue<String> problemOf(Observable value) {
        return refusal.map(said ->
                said.filter(of -> of.value().equals(value)).map(Refusal::why).orElse(""));
    }

    /** The value that is wrong. */
    final Optional<Observable> refused() {
        return refusal.get().map(Refusal::value);
    }

    /** The shelf was read anew while it is open. */
    void see(ShelfAt shelf) {}

    /** What is to be kept; empty where something is wrong, which is then said. */
    abstract Optional<Supplier<Deed.Summary>> filledIn();

    /** The container that has the focus once this is kept; empty for the one that has it. */
    Optional<String> leadsTo() {
        return Optional.empty();
    }

    /** Keeps it unless something is wrong, which is said where it is. */
    final Optional<Supplier<Deed.Summary>> unless(Optional<Refusal> wrong, Supplier<Deed.Summary> keeping) {
        refusal.set(wrong);
        return wrong.isPresent() ? Optional.empty() : Optional.of(keeping);
    }

    final Optional<Supplier<Deed.Summary>> refuse(Observable value, String why) {
        refusal.set(Optional.of(new Refusal(value, why)));
        return Optional.empty();
    }

    final Optional<Supplier<Deed.Summary>> accept(Supplier<Deed.Summary> keeping) {
        return unless(Optional.empty(), keeping);
    }

    /** A value that is wrong, and why. */
    record Refusal(Observable value, String why) {}
}
