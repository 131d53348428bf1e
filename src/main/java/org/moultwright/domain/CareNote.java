package org.moultwright.domain;

import java.time.Instant;
import java.util.UUID;
import org.moultwright.language.Texts;

/**
 * Something done for a tray, or simply noted of it.
 *
 * @param id names this note for ever
 * @param at when
 * @param tray the tray's code
 * @param what one of the words below, or any other a file brings
 * @param note further words, possibly empty
 */
public record CareNote(UUID id, Instant at, String tray, String what, String note) {
    public static final String WATERED = Texts.kept("watered");
    public static final String TURNED = Texts.kept("turned");
    public static final String CLEANED = Texts.kept("cleaned");
    public static final String LINER_CHANGED = Texts.kept("liner changed");
    public static final String NOTED = Texts.kept("noted");

    public CareNote {
        Require.text("tray", tray);
        Require.text("what", what);
    }
}
