package org.moultwright.compute.climate;

/**
 * The temperature a place was meant to have.
 *
 * @param container the container that was set, or the outermost of the place where none was
 * @param celsius the set-point, or the brood's reference temperature where none was set
 * @param isSet whether a set-point was in force
 */
record Nominal(String container, double celsius, boolean isSet) {}
