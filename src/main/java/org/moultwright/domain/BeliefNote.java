package org.moultwright.domain;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * What a keeper came to believe of a brood's timing. The latest one holds, before what came with the brood.
 *
 * @param id names it for ever
 * @param at when it was written down
 * @param timing what is believed; empty where nothing is any more, so that the assumption for the species holds
 */
public record BeliefNote(UUID id, Instant at, Optional<Timing> timing) {}
