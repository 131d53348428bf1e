package org.moultwright.domain;

import java.time.Instant;
import java.util.UUID;

/**
 * Something that happened to the mother before the sac was pulled.
 *
 * @param id names this event for ever
 * @param at when
 * @param what such as paired, cool-from, cool-to, fed, moulted, sac-seen, mother (her code is the note)
 * @param note further words, possibly empty
 */
public record RunUpEvent(UUID id, Instant at, String what, String note) {
    /** Who the mother is; her code is the note. */
    public static final String MOTHER = "mother";

    public RunUpEvent {
        Require.text("what", what);
    }
}
