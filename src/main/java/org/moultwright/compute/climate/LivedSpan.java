package org.moultwright.compute.climate;

import java.time.Instant;

/**
 * A span whose temperature comes from one source.
 *
 * @param from its start
 * @param to its end
 * @param source where the temperature comes from
 * @param sdCelsius standard uncertainty of the temperature, common to the whole span, in K
 */
public record LivedSpan(Instant from, Instant to, TemperatureSource source, double sdCelsius) {}
