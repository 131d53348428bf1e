package org.moultwright.store.reading;

/** Reads what a {@link BitWriter} wrote; past the end there are zeros. Not safe to share. */
final class BitReader implements BitCoder {
    private static final int TOP_BITS = 24;
    private static final long WHOLE = 0xFFFF_FFFFL;

    private final byte[] bytes;
    private final int end;
    private int position;
    private long code;
    private long range = WHOLE;

    BitReader(byte[] bytes, int from, int end) {
        this.bytes = bytes;
        this.position = from;
        this.end = end;
        for (int i = 0; i < 1 + Integer.BYTES; i++) {
            code = ((code << Byte.SIZE) | next()) & WHOLE;
        }
    }

    @Override
    public int bit(Odds odds, int situation, int unused) {
        int bit = narrow((range >>> Odds.BITS) * odds.ofOne(situation));
        odds.learn(situation, bit);
        return bit;
    }

    @Override
    public int evenBit(int unused) {
        return narrow(range >>> 1);
    }

    private int narrow(long bound) {
        int bit = code < bound ? 1 : 0;
        if (bit == 1) {
            range = bound;
        } else {
            code -= bound;
            range -= bound;
        }
        while (range >>> TOP_BITS == 0) {
            range = (range << Byte.SIZE) & WHOLE;
            code = ((code << Byte.SIZE) | next()) & WHOLE;
        }
        return bit;
    }

    private int next() {
        return position < end ? bytes[position++] & 0xFF : 0;
    }
}
