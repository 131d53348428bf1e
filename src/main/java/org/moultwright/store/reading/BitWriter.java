package org.moultwright.store.reading;

import java.io.ByteArrayOutputStream;

/** Writes bits. Carries are kept back until they are settled. Not safe to share. */
final class BitWriter implements BitCoder {
    private static final int TOP_BITS = 24;
    private static final long WHOLE = 0xFFFF_FFFFL;
    private static final int TAIL_BYTES = 5;

    private final ByteArrayOutputStream out;
    private long low;
    private long range = WHOLE;
    private int kept;
    private long following = 1;

    BitWriter(ByteArrayOutputStream out) {
        this.out = out;
    }

    @Override
    public int bit(Odds odds, int situation, int bit) {
        narrow((range >>> Odds.BITS) * odds.ofOne(situation), bit);
        odds.learn(situation, bit);
        return bit;
    }

    @Override
    public int evenBit(int bit) {
        narrow(range >>> 1, bit);
        return bit;
    }

    /** Writes what is kept back; zeros at the end are left out, as a reader finds them there anyway. */
    void end() {
        for (int i = 0; i < TAIL_BYTES; i++) {
            shift();
        }
    }

    private void narrow(long bound, int bit) {
        if (bit == 1) {
            range = bound;
        } else {
            low += bound;
            range -= bound;
        }
        while (range >>> TOP_BITS == 0) {
            range = (range << Byte.SIZE) & WHOLE;
            shift();
        }
    }

    private void shift() {
        if (low < 0xFF00_0000L || low > WHOLE) {
            int carry = (int) (low >>> Integer.SIZE);
            int settled = kept;
            while (following > 0) {
                out.write(settled + carry);
                settled = 0xFF;
                following--;
            }
            kept = (int) ((low >>> TOP_BITS) & 0xFF);
        }
        following++;
        low = (low << Byte.SIZE) & WHOLE;
    }
}
