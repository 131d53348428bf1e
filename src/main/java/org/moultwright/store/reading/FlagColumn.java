package org.moultwright.store.reading;

/** One column of yes and no, mostly yes: whether all are costs one bit, and what is not comes in runs. */
final class FlagColumn {
    private FlagColumn() {}

    /** Writes these flags, or reads as many over them. */
    static boolean[] code(BitCoder coder, boolean[] flags) {
        boolean all = true;
        for (boolean flag : flags) {
            all &= flag;
        }
        boolean codedAll = coder.evenBit(all ? 1 : 0) == 1;
        Odds odds = new Odds(2);
        int before = 1;
        for (int i = 0; i < flags.length; i++) {
            before = codedAll ? 1 : coder.bit(odds, before, flags[i] ? 1 : 0);
            flags[i] = before == 1;
        }
        return flags;
    }
}
