package org.moultwright.store.reading;

/**
 * Whole numbers of either sign, small ones cheapest: their length bit by bit, then the bits below the first. It
 * learns which lengths and leading bits are common. Not safe to share.
 */
final class NumberCoder {
    /** Of the bits below the first so many are worth learning. */
    private static final int LEARNED_BITS = 3;

    private final BitCoder coder;
    private final Odds lengths = new Odds(Long.SIZE + 1);
    private final Odds leading = new Odds((Long.SIZE + 1) << LEARNED_BITS);

    NumberCoder(BitCoder coder) {
        this.coder = coder;
    }

    long code(long number) {
        long folded = (number << 1) ^ (number >> (Long.SIZE - 1));
        int wanted = Long.SIZE - Long.numberOfLeadingZeros(folded);
        int length = 0;
        while (length < Long.SIZE && coder.bit(lengths, length, wanted > length ? 1 : 0) == 1) {
            length++;
        }
        if (length == 0) {
            return 0;
        }
        int learned = Math.min(LEARNED_BITS, length - 1);
        int known = 1;
        for (int i = 1; i <= learned; i++) {
            int bit = (int) ((folded >>> (length - 1 - i)) & 1);
            known = (known << 1) | coder.bit(leading, (length << LEARNED_BITS) + known, bit);
        }
        int rest = length - 1 - learned;
        long coded = ((long) known << rest) | coder.plain(rest, folded);
        return (coded >>> 1) ^ -(coded & 1);
    }
}
