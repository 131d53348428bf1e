package org.moultwright.domain;

import java.time.Instant;
import java.util.UUID;

/**
 * Whether a completed brood is to teach later ones. The latest note of a brood holds; without one it teaches.
 *
 * @param id names it for ever
 * @param brood the code of the brood that would teach
 * @param at when it was written down
 * @param isLeftOut whether nothing is to be learned from it
 * @param reason why, possibly empty
 */
public record LessonNote(UUID id, String brood, Instant at, boolean isLeftOut, String reason) {
    public LessonNote {
        Require.text("brood", brood);
    }
}
