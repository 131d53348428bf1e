package org.moultwright.compute.forecast;

import java.time.Instant;

/**
 * When something happens or happened, with its uncertainty: it lies between the outer two with 80 % probability.
 */
public record InstantInterval(Instant p10, Instant p50, Instant p90) {}
