package org.moultwright.workflow;

import java.time.Instant;

/** How a probe's wire is doing. */
public sealed interface LinkState {

    /** The port is being opened, or is open and nothing has come yet. */
    record Connecting() implements LinkState {}

    /** Lines come. */
    record Live() implements LinkState {}

    /**
     * The port is open but no line has come for longer than this probe's habit allows.
     *
     * @param lastHeardAt when the last line came, or the port was opened if none has
     */
    record Silent(Instant lastHeardAt) implements LinkState {}

    /** The wire was pulled, or the port went away. It is tried again. */
    record Lost() implements LinkState {}

    /**
     * The port cannot be opened. It is tried again.
     *
     * @param code a short code to search for
     * @param sentence what is wrong and what the keeper can do about it
     */
    record Refused(String code, String sentence) implements LinkState {}
}
