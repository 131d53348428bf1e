package org.moultwright.store.reading;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;

/**
 * One column of measured numbers in few bytes, without loss: where all numbers are short decimals, as
 * instruments print them, the steps between their digits; else the numbers bit by bit.
 */
final class PackedColumn {
    private static final int BIT_BY_BIT = 255;
    private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6};
    private static final double LARGEST_EXACT = 1L << 52;

    private PackedColumn() {}

    static void write(DataOutput out, double[] values) throws IOException {
        int decimals = decimals(values);
        out.writeByte(decimals);
        if (decimals == BIT_BY_BIT) {
            for (double value : values) {
                out.writeDouble(value);
            }
        } else {
            writeSteps(out, values, POWERS[decimals]);
        }
    }

    static double[] read(DataInput in, int size) throws IOException {
        int decimals = in.readUnsignedByte();
        if (decimals == BIT_BY_BIT) {
            double[] values = new double[size];
            for (int i = 0; i < size; i++) {
                values[i] = in.readDouble();
            }
            return values;
        }
        if (decimals >= POWERS.length) {
            throw new IOException("a column has " + decimals + " decimals");
        }
        return readSteps(in, size, POWERS[decimals]);
    }

    /** A number that is none is written as "absent"; the step after it starts from the number before it. */
    private static void writeSteps(DataOutput out, double[] values, double power) throws IOException {
        long previous = 0;
        for (double value : values) {
            boolean present = !Double.isNaN(value);
            out.writeBoolean(present);
            if (present) {
                long digits = Math.round(value * power);
                VarNumbers.write(out, digits - previous);
                previous = digits;
            }
        }
    }

    private static double[] readSteps(DataInput in, int size, double power) throws IOException {
        double[] values = new double[size];
        long digits = 0;
        for (int i = 0; i < size; i++) {
            if (in.readBoolean()) {
                digits += VarNumbers.read(in);
                values[i] = digits / power;
            } else {
                values[i] = Double.NaN;
            }
        }
        return values;
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
