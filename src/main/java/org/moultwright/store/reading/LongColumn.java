package org.moultwright.store.reading;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.LongUnaryOperator;

/**
 * One column of whole numbers, less the noughts all end in: each as its distance from what the ones before let
 * expect. Where only a few
 * different ones occur, as of an instrument with coarse steps, their ranks stand for them.
 */
final class LongColumn {
    private static final int RANKS_BITS = 6;
    private static final int MOST_RANKS = (1 << RANKS_BITS) - 1;

    private static final int POWERS_BITS = 3;
    private static final long[] POWERS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000};

    private LongColumn() {}

    static void write(BitCoder coder, long[] given) {
        long scale = POWERS[(int) coder.plain(POWERS_BITS, tens(given))];
        long[] values = new long[given.length];
        Arrays.setAll(values, i -> given[i] / scale);
        long[] ranks = ranks(values);
        long[] coded = values.clone();
        codeRanks(coder, ranks);
        if (ranks.length > 0) {
            Arrays.setAll(coded, i -> Arrays.binarySearch(ranks, values[i]));
        }
        int smooth = cost(coded, new Smooth()) < cost(coded, new Last()) ? 1 : 0;
        code(coder, coded, coder.evenBit(smooth));
    }

    static long[] read(BitCoder coder, int size) {
        long scale = POWERS[(int) coder.plain(POWERS_BITS, 0)];
        long[] ranks = codeRanks(coder, new long[0]);
        long[] values = new long[size];
        code(coder, values, coder.evenBit(0));
        if (ranks.length > 0) {
            for (int i = 0; i < size; i++) {
                if (values[i] < 0 || values[i] >= ranks.length) {
                    throw new IllegalArgumentException("rank " + values[i] + " must be below " + ranks.length);
                }
                values[i] = ranks[(int) values[i]];
            }
        }
        Arrays.setAll(values, i -> values[i] * scale);
        return values;
    }

    private static void code(BitCoder coder, long[] values, int smooth) {
        NumberCoder numbers = new NumberCoder(coder);
        LongUnaryOperator expected = smooth == 1 ? new Smooth() : new Last();
        long next = 0;
        for (int i = 0; i < values.length; i++) {
            values[i] = next + numbers.code(values[i] - next);
            next = expected.applyAsLong(values[i]);
        }
    }

    private static long[] codeRanks(BitCoder coder, long[] ranks) {
        long[] coded = new long[(int) coder.plain(RANKS_BITS, ranks.length)];
        NumberCoder steps = new NumberCoder(coder);
        long previous = 0;
        for (int i = 0; i < coded.length; i++) {
            previous += steps.code(i < ranks.length ? ranks[i] - previous : 0);
            coded[i] = previous;
        }
        return coded;
    }

    /** How many noughts all values end in, at most seven. */
    private static int tens(long[] values) {
        int tens = POWERS.length - 1;
        for (long value : values) {
            while (value % POWERS[tens] != 0) {
                tens--;
            }
        }
        return tens;
    }

    /** The different values in order, if ranks are worth it. */
    private static long[] ranks(long[] values) {
        Map<Long, Long> different = new HashMap<>();
        long low = Long.MAX_VALUE;
        long high = Long.MIN_VALUE;
        for (long value : values) {
            low = Math.min(low, value);
            high = Math.max(high, value);
            if (different.size() <= MOST_RANKS) {
                different.put(value, value);
            }
        }
        int count = different.size();
        boolean isWorthIt = count > 1 && count <= MOST_RANKS && count * 4L < values.length && high - low >= 2L * count;
        return isWorthIt
                ? different.keySet().stream()
                        .mapToLong(Long::longValue)
                        .sorted()
                        .toArray()
                : new long[0];
    }

    /** In bits, roughly. */
    private static long cost(long[] values, LongUnaryOperator expected) {
        long bits = 0;
        long next = values.length == 0 ? 0 : values[0];
        for (long value : values) {
            bits += Long.SIZE - Long.numberOfLeadingZeros(Math.abs(value - next));
            next = expected.applyAsLong(value);
        }
        return bits;
    }

    /** What comes next is what was. */
    private static final class Last implements LongUnaryOperator {
        @Override
        public long applyAsLong(long value) {
            return value;
        }
    }

    /** What comes next lies amid the last few, of which each scatters by itself. */
    private static final class Smooth implements LongUnaryOperator {
        private static final int FRACTION_BITS = 4;
        private static final int PACE_BITS = 2;
        private static final long LARGEST = 1L << 56;

        private long sixteenths;
        private boolean hasBegun;

        @Override
        public long applyAsLong(long value) {
            long scaled = Math.max(-LARGEST, Math.min(LARGEST, value)) << FRACTION_BITS;
            sixteenths = hasBegun ? sixteenths + ((scaled - sixteenths) >> PACE_BITS) : scaled;
            hasBegun = true;
            return (sixteenths + (1 << (FRACTION_BITS - 1))) >> FRACTION_BITS;
        }
    }
}
