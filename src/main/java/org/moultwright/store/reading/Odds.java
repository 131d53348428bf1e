package org.moultwright.store.reading;

import java.util.Arrays;

/** How likely the next bit is a one, learned for each situation from the bits before. Not safe to share. */
final class Odds {
    /** Odds are whole parts of this. */
    static final int BITS = 16;

    private static final int HALF = 1 << (BITS - 1);
    private static final int LEAST = 1 << 5;
    private static final int SLOWEST = 60;
    private static final int[] SHARE = shares();

    private final int[] ofOne;
    private final byte[] seen;

    Odds(int situations) {
        this.ofOne = new int[situations];
        this.seen = new byte[situations];
        Arrays.fill(ofOne, HALF);
    }

    /** Between nought and {@code 1 << BITS}, neither of them. */
    int ofOne(int situation) {
        return ofOne[situation];
    }

    /** The first bits count most, as nothing is known before them. */
    void learn(int situation, int bit) {
        int target = bit == 1 ? (1 << BITS) - LEAST : LEAST;
        ofOne[situation] += (int) (((long) (target - ofOne[situation]) * SHARE[seen[situation]]) >> BITS);
        if (seen[situation] < SLOWEST) {
            seen[situation]++;
        }
    }

    private static int[] shares() {
        int[] shares = new int[SLOWEST + 1];
        Arrays.setAll(shares, i -> (int) ((1 << BITS) / (i + 1.6)));
        return shares;
    }
}
