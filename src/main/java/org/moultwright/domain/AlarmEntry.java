package org.moultwright.domain;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * One line of the alarm journal.
 *
 * @param id names it for ever
 * @param at when, by the wall clock
 * @param container the container watched
 * @param value what it happened at, NaN where there is no number
 * @param quietUntil when the snooze ends, if this is one
 */
public record AlarmEntry(
        UUID id,
        Instant at,
        String container,
        AlarmKind kind,
        AlarmTurn turn,
        double value,
        Optional<Instant> quietUntil) {
    public AlarmEntry {
        Require.text("container", container);
        Require.that(
                quietUntil.isPresent() == (turn == AlarmTurn.SNOOZED),
                "quietUntil belongs to a snooze, not to " + turn);
    }
}
