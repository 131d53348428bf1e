package org.moultwright.compute.forecast;

/**
 * Mould that breaks out in a tray and kills a part of its animals within days.
 *
 * @param age the age it happens at, in warm-days; infinite where it does not
 * @param share of the animals it kills
 */
record Burst(double age, double share) {
    /** The share of the animals it leaves alive from one age to another. */
    double survival(double fromAge, double toAge) {
        return fromAge < age && age <= toAge ? 1 - share : 1;
    }
}
