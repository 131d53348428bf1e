package org.moultwright.compute.stage;

import java.util.Optional;

/**
 * What is known of one boundary between two looks that counted it.
 *
 * @param fromAge age at the earlier look, in warm-days
 * @param toAge age at the later look
 * @param waiting animals that could have passed in between
 * @param passed those that did, within [0, waiting]
 * @param glimpse what a partial look in between said
 */
record PassingStep(double fromAge, double toAge, double waiting, double passed, Optional<Glimpse> glimpse) {}
