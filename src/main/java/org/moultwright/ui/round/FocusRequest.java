package org.moultwright.ui.round;

import org.jspecify.annotations.Nullable;
import org.moultwright.domain.Stage;

/**
 * Where the keeper's hands should be next.
 *
 * @param serial tells one request from the next to the same place
 */
record FocusRequest(int serial, Target target) {
    /** One request is never another, not even for the same place. */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return serial;
    }

    /** A place on the sheet. */
    public sealed interface Target {}

    /** The field of a stage. */
    public record Row(Stage stage) implements Target {}

    /** The button that ends the sheet. */
    public record Done() implements Target {}

    /** The note. */
    public record Note() implements Target {}
}
