package org.moultwright.domain;

/**
 * A reading the keeper took off a thermometer and wrote down.
 *
 * @param probe the code its readings stand under, as those of a probe
 * @param reading what was read, and when
 */
public record HandReading(String probe, Reading reading) {
    /** Standard uncertainty of a thermometer nobody has calibrated, in K (our assumption, no source). */
    public static final double SD_CELSIUS = 0.5;

    private static final String BY_HAND = "hand ";

    public HandReading {
        Require.text("probe", probe);
    }

    /** The code under which what is read in a container stands. */
    public static String probeIn(String container) {
        return BY_HAND + container;
    }

    /** Whether a probe's code is one of readings written down by hand: nothing is plugged in there. */
    public static boolean isByHand(String probe) {
        return probe.startsWith(BY_HAND);
    }
}
