package org.moultwright.compute.forecast;

/**
 * When mould next breaks out in a tray and kills a part of its animals within days, in each of many possible truths. Kept
 * as plain numbers: a room has some hundred thousand of them.
 *
 * @param ages the ages it happens at, in warm-days, by draw
 * @param shares of the animals it kills, by draw
 */
@SuppressWarnings("ArrayRecordComponent") // Made once, never changed, never compared.
record Bursts(double[] ages, double[] shares) {
    /** The share of the animals it leaves alive from one age to another. */
    double survival(int draw, double fromAge, double toAge) {
        return fromAge < ages[draw] && ages[draw] <= toAge ? 1 - shares[draw] : 1;
    }
}
