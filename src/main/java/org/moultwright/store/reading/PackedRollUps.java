package org.moultwright.store.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import org.moultwright.domain.RollUp;

/** Roll-ups of one level in few bytes, column by column, without loss. */
final class PackedRollUps {
    private static final int FORMAT = 1;

    private PackedRollUps() {}

    static byte[] pack(List<RollUp> rollUps) {
        BitWriter out = new BitWriter(FORMAT);
        new NumberCoder(out).code(rollUps.size());
        write(out, rollUps, RollUp::startMillis);
        write(out, rollUps, RollUp::good);
        write(out, rollUps, RollUp::bad);
        write(out, rollUps, rollUp -> rollUp.firstMillis() - rollUp.startMillis());
        write(out, rollUps, rollUp -> rollUp.lastMillis() - rollUp.startMillis());
        writeMeasured(out, rollUps, RollUp::firstCelsius);
        writeMeasured(out, rollUps, RollUp::lastCelsius);
        writeMeasured(out, rollUps, RollUp::lowCelsius);
        writeMeasured(out, rollUps, RollUp::highCelsius);
        write(out, rollUps, RollUp::sumMicroCelsius);
        return out.written();
    }

    /** @throws IllegalArgumentException if the bytes are no packed roll-ups */
    static List<RollUp> unpack(byte[] packed) {
        if (packed.length == 0 || packed[0] != FORMAT) {
            throw new IllegalArgumentException("roll-ups are not of format " + FORMAT);
        }
        BitReader in = new BitReader(packed, 1, packed.length);
        long size = new NumberCoder(in).code(0);
        if (size < 0 || size > RollUpSpan.ROLL_UPS) {
            throw new IllegalArgumentException("a span has " + size + " roll-ups");
        }
        return unpacked(in, (int) size);
    }

    private static List<RollUp> unpacked(BitReader in, int size) {
        long[] starts = LongColumn.read(in, size);
        long[] good = LongColumn.read(in, size);
        long[] bad = LongColumn.read(in, size);
        long[] firstAfter = LongColumn.read(in, size);
        long[] lastAfter = LongColumn.read(in, size);
        double[] first = DecimalColumn.read(in, size);
        double[] last = DecimalColumn.read(in, size);
        double[] low = DecimalColumn.read(in, size);
        double[] high = DecimalColumn.read(in, size);
        long[] sums = LongColumn.read(in, size);
        List<RollUp> rollUps = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            rollUps.add(new RollUp(
                    starts[i],
                    (int) good[i],
                    (int) bad[i],
                    starts[i] + firstAfter[i],
                    first[i],
                    starts[i] + lastAfter[i],
                    last[i],
                    low[i],
                    high[i],
                    sums[i]));
        }
        return rollUps;
    }

    private static void write(BitWriter out, List<RollUp> rollUps, ToLongFunction<RollUp> column) {
        LongColumn.write(out, rollUps.stream().mapToLong(column).toArray());
    }

    private static void writeMeasured(BitWriter out, List<RollUp> rollUps, ToDoubleFunction<RollUp> column) {
        double[] values = new double[rollUps.size()];
        Arrays.setAll(values, i -> column.applyAsDouble(rollUps.get(i)));
        DecimalColumn.write(out, values);
    }
}
