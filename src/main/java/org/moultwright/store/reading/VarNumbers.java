package org.moultwright.store.reading;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;

/** Whole numbers in as few bytes as they need, seven bits a byte, small ones of either sign shortest. */
final class VarNumbers {
    private static final int BITS = 7;
    private static final int MORE = 1 << BITS;

    private VarNumbers() {}

    static void write(DataOutput out, long number) throws IOException {
        long rest = (number << 1) ^ (number >> (Long.SIZE - 1));
        while (rest >>> BITS != 0) {
            out.writeByte((int) rest | MORE);
            rest >>>= BITS;
        }
        out.writeByte((int) rest);
    }

    static long read(DataInput in) throws IOException {
        long folded = 0;
        for (int shift = 0; shift < Long.SIZE; shift += BITS) {
            int next = in.readUnsignedByte();
            folded |= (long) (next & (MORE - 1)) << shift;
            if (next < MORE) {
                return (folded >>> 1) ^ -(folded & 1);
            }
        }
        throw new IOException("a number has too many bytes");
    }
}
