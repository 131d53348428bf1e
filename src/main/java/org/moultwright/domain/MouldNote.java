package org.moultwright.domain;

import java.time.Instant;
import java.util.UUID;

/**
 * Mould found in a tray and what was done about it. Words are the keeper's; animals lost to it are ledger entries.
 *
 * @param id names this note for ever
 * @param at when it was seen
 * @param tray the tray's code
 * @param where what it grew on, such as shells, dead animal, living animals, liner, wall
 * @param extent how far it had gone, such as speck, patch, spread
 * @param action what was done
 * @param lost animals lost to it, at least 0
 */
public record MouldNote(UUID id, Instant at, String tray, String where, String extent, String action, int lost) {
    public MouldNote {
        Require.text("tray", tray);
        Require.text("where", where);
        Require.atLeast("lost", lost, 0);
    }
}
