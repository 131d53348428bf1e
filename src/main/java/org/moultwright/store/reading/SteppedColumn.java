package org.moultwright.store.reading;

import java.io.DataInput;
import java.io.IOException;

/** One column of measured numbers in the first form: the steps between their digits, else the numbers bit by bit. */
final class SteppedColumn {
    private static final int BIT_BY_BIT = 255;
    private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6};

    private SteppedColumn() {}

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
}
