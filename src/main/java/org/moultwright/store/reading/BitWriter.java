package org.moultwright.store.reading;

import java.util.Arrays;

/** Writes bits. Carries are kept back until they are settled. Used once; not safe to share. */
final class BitWriter implements BitCoder {
    private static final int TOP_BITS = 24;
    private static final long WHOLE = 0xFFFF_FFFFL;
    private static final int TAIL_BYTES = 5;

    private byte[] bytes = new byte[256];
    private int size;
    private long low;
    private long range = WHOLE;
    private int kept;
    private long following = 1;

    /** @param head what stands before the bits */
    BitWriter(int head) {
        bytes[size++] = (byte) head;
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

    /** The head and all that was written, less the zeros at the end, which a reader finds there anyway. */
    byte[] written() {
        for (int i = 0; i < TAIL_BYTES; i++) {
            shift();
        }
        while (size > 1 && bytes[size - 1] == 0) {
            size--;
        }
        return Arrays.copyOf(bytes, size);
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
                add((byte) (settled + carry));
                settled = 0xFF;
                following--;
            }
            kept = (int) ((low >>> TOP_BITS) & 0xFF);
        }
        following++;
        low = (low << Byte.SIZE) & WHOLE;
    }

    private void add(byte next) {
        if (size == bytes.length) {
            bytes = Arrays.copyOf(bytes, 2 * size);
        }
        bytes[size++] = next;
    }
}
