package org.moultwright.ui.register;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;

/** The pots selected, by code, in the order they were. They stay selected whatever is shown. */
final class PotMarks {
    private final Set<String> codes = new LinkedHashSet<>();
    private final ReadOnlyIntegerWrapper revision = new ReadOnlyIntegerWrapper();

    /** Another number whenever the selection is another. */
    ReadOnlyIntegerProperty revisionProperty() {
        return revision.getReadOnlyProperty();
    }

    boolean has(String code) {
        return codes.contains(code);
    }

    boolean isEmpty() {
        return codes.isEmpty();
    }

    int count() {
        return codes.size();
    }

    List<String> all() {
        return List.copyOf(codes);
    }

    /** Whether it was not among them before. */
    boolean add(String code) {
        return changed(codes.add(code));
    }

    void addAll(Collection<String> more) {
        changed(codes.addAll(more));
    }

    void toggle(String code) {
        if (!codes.remove(code)) {
            codes.add(code);
        }
        changed(true);
    }

    void clear() {
        boolean any = !codes.isEmpty();
        codes.clear();
        changed(any);
    }

    /** Those that are no longer in the register are no longer selected. */
    void keepOnly(Set<String> there) {
        changed(codes.retainAll(there));
    }

    private boolean changed(boolean isChange) {
        if (isChange) {
            revision.set(revision.get() + 1);
        }
        return isChange;
    }
}
