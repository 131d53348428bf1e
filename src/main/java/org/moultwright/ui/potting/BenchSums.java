package org.moultwright.ui.potting;

/**
 * The bench in figures.
 *
 * @param bySize how many go into pots of each size, in words; empty where there is one size
 * @param detail what to do about them, possibly empty
 * @param canBeDone whether they add up and everything else is filled in
 */
record BenchSums(int taken, int potted, int lost, String bySize, String detail, boolean canBeDone) {
    static final BenchSums NOTHING = new BenchSums(0, 0, 0, "", "", false);

    boolean addsUp() {
        return taken == potted + lost;
    }
}
