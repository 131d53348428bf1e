package org.moultwright.domain;

import java.time.Instant;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.UUID;

/**
 * What one look at a tray showed. An observation, never an entry: it moves no animal.
 *
 * @param id names this check for ever
 * @param tray the tray's code
 * @param at when the keeper looked, after the dead of that moment were taken out
 * @param looks what was seen of each stage; a stage left out was not looked at
 */
public record Check(UUID id, String tray, Instant at, Map<Stage, Look> looks) {
    public Check {
        Require.text("tray", tray);
        EnumMap<Stage, Look> seen = new EnumMap<>(Stage.class);
        looks.forEach((stage, look) -> {
            if (!(look instanceof Look.NotLooked)) {
                seen.put(stage, look);
            }
        });
        looks = Collections.unmodifiableMap(seen);
    }

    public Look look(Stage stage) {
        Look look = looks.get(stage);
        return look == null ? new Look.NotLooked() : look;
    }

    /** The number of animals of a stage, where it is known: counted in full, or none. */
    public OptionalInt counted(Stage stage) {
        Look look = look(stage);
        if (look instanceof Look.Full full) {
            return OptionalInt.of(full.count());
        }
        return look instanceof Look.None ? OptionalInt.of(0) : OptionalInt.empty();
    }

    /**
     * All animals alive in the tray, if every stage that was looked at was counted and at least one was
     * counted in full: a stage not written down then holds none. Dark nymphs merely seen are among the
     * nymphs counted.
     */
    public OptionalInt total() {
        boolean anyFull = looks.values().stream().anyMatch(Look.Full.class::isInstance);
        boolean allKnown = looks.keySet().stream().allMatch(this::isKnown);
        return anyFull && allKnown
                ? OptionalInt.of(looks.keySet().stream()
                        .mapToInt(stage -> counted(stage).orElse(0))
                        .sum())
                : OptionalInt.empty();
    }

    private boolean isKnown(Stage stage) {
        return counted(stage).isPresent() || (stage == Stage.DARKENED && look(Stage.INSTAR1) instanceof Look.Full);
    }
}
