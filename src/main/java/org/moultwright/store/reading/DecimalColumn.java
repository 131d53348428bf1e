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
        Odds presence = new Odds(2);
        long[] numbers = new long[values.length];
        int decimals = (int) coder.plain(DECIMALS_BITS, decimals(values));
        int count = 0;
        int before = 1;
        for (double value : values) {
            before = coder.bit(presence, before, Double.isNaN(value) ? 0 : 1);
            if (before == 1) {
                numbers[count++] =
                        decimals == BIT_BY_BIT ? Double.doubleToLongBits(value) : Math.round(value * POWERS[decimals]);
            }
        }
        LongColumn.write(coder, Arrays.copyOf(numbers, count));
    }

    static double[] read(BitCoder coder, int size) {
        Odds presence = new Odds(2);
        int decimals = (int) coder.plain(DECIMALS_BITS, 0);
        boolean[] present = new boolean[size];
        int count = 0;
        int before = 1;
        for (int i = 0; i < size; i++) {
            before = coder.bit(presence, before, 0);
            present[i] = before == 1;
            count += before;
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
