package org.moultwright.domain;

import java.time.Instant;
import java.util.UUID;

/**
 * A sac taken from its mother, as written at the desk.
 *
 * @param id names this note for ever
 * @param at when it was taken
 */
public record PullNote(UUID id, Instant at) {}
