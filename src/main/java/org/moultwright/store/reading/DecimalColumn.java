package org.moultwright.store.reading;

import java.util.Arrays;

/**
 * One column of measured numbers without loss: where all are short decimals, as instruments print them, their
 * digits; else bit by bit. A number that is none is marked as absent.
 */
final class DecimalColumn {
    private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6};
    private static final int BIT_BY_BIT = POWERS.length;
    private static final int DECIMALS_BITS = 3;
    private static final double LARGEST_EXACT = 1L << 52;

    private DecimalColumn() {}

    static void write(BitCoder coder, double[] values) {
        int decimals = (int) coder.plain(DECIMALS_BITS, decimals(values));
        boolean[] present = new boolean[values.length];
        long[] numbers = new long[values.length];
        int count = 0;
        for (int i = 0; i < values.length; i++) {
            present[i] = !Double.isNaN(values[i]);
            if (present[i]) {
                numbers[count++] = decimals == BIT_BY_BIT
                        ? Double.doubleToLongBits(values[i])
                        : Math.round(values[i] * POWERS[decimals]);
            }
        }
        FlagColumn.code(coder, present);
        LongColumn.write(coder, Arrays.copyOf(numbers, count));
    }

    static double[] read(BitCoder coder, int size) {
        int decimals = (int) coder.plain(DECIMALS_BITS, 0);
        boolean[] present = FlagColumn.code(coder, new boolean[size]);
        int count = 0;
        for (boolean one : present) {
            count += one ? 1 : 0;
        }
        long[] numbers = LongColumn.read(coder, count);
        double[] values = new double[size];
        int next = 0;
        for (int i = 0; i < size; i++) {
            values[i] = present[i] ? value(numbers[next++], decimals) : Double.NaN;
        }
        return values;
    }

    private static double value(long number, int decimals) {
        return decimals == BIT_BY_BIT ? Double.longBitsToDouble(number) : number / POWERS[decimals];
    }

    private static int decimals(double[] values) {
        int decimals = 0;
        for (double value : values) {
            while (decimals < POWERS.length && !isExact(value, POWERS[decimals])) {
                decimals++;
            }
        }
        boolean allExact = decimals < POWERS.length;
        for (double value : values) {
            allExact = allExact && isExact(value, POWERS[decimals]);
        }
        return allExact ? decimals : BIT_BY_BIT;
    }

    private static boolean isExact(double value, double power) {
        if (Double.isNaN(value)) {
            return true;
        }
        double scaled = value * power;
        return Math.abs(scaled) < LARGEST_EXACT
                && Double.doubleToLongBits(Math.round(scaled) / power) == Double.doubleToLongBits(value);
    }
}
