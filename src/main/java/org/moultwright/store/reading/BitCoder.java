package org.moultwright.store.reading;

/**
 * Writes bits, or reads them back, at the cost of their odds (range coding, Martin 1979, bit by bit). What is
 * packed is described once, for both: a writer takes the bit it is given, a reader gives the bit that was written.
 */
interface BitCoder {
    /** Codes one bit and learns from it. */
    int bit(Odds odds, int situation, int bit);

    /** Codes the lowest bits of a number, of which nothing is known. */
    default long plain(int bits, long number) {
        long coded = 0;
        for (int i = bits - 1; i >= 0; i--) {
            coded = (coded << 1) | evenBit((int) ((number >>> i) & 1));
        }
        return coded;
    }

    /** Codes a bit that is as likely a one as not. */
    int evenBit(int bit);
}
