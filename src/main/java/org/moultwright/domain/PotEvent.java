package org.moultwright.domain;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * Something that happened to the animal of one pot.
 *
 * @param id names it for ever
 * @param at when
 * @param pot the pot's code
 * @param what what happened
 * @param note further words, such as who has it now, possibly empty
 */
public record PotEvent(UUID id, Instant at, String pot, What what, String note) {
    public PotEvent {
        Require.text("pot", pot);
    }

    /** What can happen to the animal of a pot. */
    public enum What implements Keyed {
        FED("fed"),
        MOULTED("moulted"),
        DIED("died"),
        HANDED_OVER("handed-over");

        private final String key;

        What(String key) {
            this.key = key;
        }

        @Override
        public String key() {
            return key;
        }

        /** Whether the animal is no longer in the keeper's care afterwards. */
        public boolean isLast() {
            return this == DIED || this == HANDED_OVER;
        }

        public static Optional<What> fromKey(String key) {
            return Keyed.find(values(), key);
        }
    }
}
