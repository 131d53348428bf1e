package org.moultwright.ui.round;

import org.moultwright.domain.Stage;

/**
 * Where the keeper's hands should be next.
 *
 * @param serial tells one request from the next to the same place
 */
record FocusRequest(int serial, Target target) {

    /** A place on the sheet. */
    public sealed interface Target {}

    /** The field of a stage. */
    public record Row(Stage stage) implements Target {}

    /** The button that ends the sheet. */
    public record Done() implements Target {}

    /** The note. */
    public record Note() implements Target {}
}
