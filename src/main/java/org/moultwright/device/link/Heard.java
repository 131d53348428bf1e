package org.moultwright.device.link;

import java.time.Instant;
import org.moultwright.device.profile.Told;

/**
 * A record that came over a wire.
 *
 * @param told what it says and who says it
 * @param rawLine the record as it is kept
 * @param at when it came, an instant no other record of the wire has
 * @param heldUp whether it was held up on its way, so that nobody knows when it was said
 */
public record Heard(Told told, String rawLine, Instant at, boolean heldUp) {}
