package org.moultwright.store.reading;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.zip.CRC32;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;

/**
 * A series of readings in few bytes, without loss: column by column, each number as its distance from what the
 * ones before let expect, at the cost of its odds. Noise is all that is left: about a byte and a half a reading of
 * temperature and humidity at jittered times.
 */
final class PackedSeries {
    private static final int FORMAT = 2;
    private static final int CHECKSUM_BYTES = Integer.BYTES;

    private PackedSeries() {}

    static byte[] pack(ReadingSeries series) {
        BitWriter out = new BitWriter(FORMAT);
        new NumberCoder(out).code(series.size());
        writeTimes(out, series);
        codeQualities(out, qualities(series));
        DecimalColumn.write(out, column(series, series::temperatureCelsius));
        DecimalColumn.write(out, column(series, series::humidityPercent));
        byte[] written = out.written();
        byte[] packed = Arrays.copyOf(written, written.length + CHECKSUM_BYTES);
        ByteBuffer.wrap(packed).putInt(written.length, checksum(written, written.length));
        return packed;
    }

    /**
     * Adds the readings to a builder, in their order.
     *
     * @throws IllegalArgumentException if the bytes are no packed series, or a damaged one
     */
    static void unpackInto(ReadingSeries.Builder builder, byte[] packed) {
        unpackInto(builder, packed, true);
    }

    /** Adds the readings without their humidity, which is quicker. */
    static void unpackTemperaturesInto(ReadingSeries.Builder builder, byte[] packed) {
        unpackInto(builder, packed, false);
    }

    private static void unpackInto(ReadingSeries.Builder builder, byte[] packed, boolean withHumidity) {
        if (packed.length > 0 && packed[0] == DeflatedSeries.FORMAT) {
            DeflatedSeries.unpackInto(builder, packed);
            return;
        }
        BitReader in = checked(packed);
        int size = size(new NumberCoder(in).code(0));
        long[] times = readTimes(in, size);
        Quality[] qualities = codeQualities(in, new Quality[size]);
        double[] temperatures = DecimalColumn.read(in, size);
        double[] humidities = withHumidity ? DecimalColumn.read(in, size) : absent(size);
        for (int i = 0; i < size; i++) {
            builder.add(times[i], temperatures[i], humidities[i], qualities[i]);
        }
    }

    private static BitReader checked(byte[] packed) {
        int end = packed.length - CHECKSUM_BYTES;
        if (end < 1 || packed[0] != FORMAT) {
            throw new IllegalArgumentException("series has format " + (packed.length == 0 ? "none" : "" + packed[0])
                    + " but must have " + DeflatedSeries.FORMAT + " or " + FORMAT);
        }
        if (ByteBuffer.wrap(packed).getInt(end) != checksum(packed, end)) {
            throw new IllegalArgumentException("series cannot be unpacked: its checksum does not fit");
        }
        return new BitReader(packed, 1, end);
    }

    /** What a program with a fault could have written must not take all memory. */
    private static int size(long size) {
        if (size < 0 || size > Integer.MAX_VALUE / Long.BYTES) {
            throw new IllegalArgumentException("series cannot be unpacked: it says it has " + size + " readings");
        }
        return (int) size;
    }

    private static double[] absent(int size) {
        double[] absent = new double[size];
        Arrays.fill(absent, Double.NaN);
        return absent;
    }

    private static double[] column(ReadingSeries series, IntToDoubleFunction value) {
        double[] column = new double[series.size()];
        Arrays.setAll(column, value);
        return column;
    }

    private static Quality[] qualities(ReadingSeries series) {
        Quality[] qualities = new Quality[series.size()];
        Arrays.setAll(qualities, series::quality);
        return qualities;
    }

    /** The times as their distance from those of a regular beat. */
    private static void writeTimes(BitWriter out, ReadingSeries series) {
        long[] times = new long[series.size()];
        Arrays.setAll(times, series::epochMillis);
        long start = times.length == 0 ? 0 : times[0];
        long beat = medianStep(times);
        NumberCoder numbers = new NumberCoder(out);
        numbers.code(start);
        numbers.code(beat);
        Arrays.setAll(times, i -> times[i] - start - i * beat);
        LongColumn.write(out, times);
    }

    private static long[] readTimes(BitReader in, int size) {
        NumberCoder numbers = new NumberCoder(in);
        long start = numbers.code(0);
        long beat = numbers.code(0);
        long[] times = LongColumn.read(in, size);
        Arrays.setAll(times, i -> start + i * beat + times[i]);
        return times;
    }

    private static long medianStep(long[] times) {
        if (times.length < 2) {
            return 0;
        }
        long[] steps = new long[times.length - 1];
        Arrays.setAll(steps, i -> times[i + 1] - times[i]);
        Arrays.sort(steps);
        return steps[steps.length / 2];
    }

    private static Quality[] codeQualities(BitCoder coder, Quality[] qualities) {
        boolean[] good = new boolean[qualities.length];
        for (int i = 0; i < good.length; i++) {
            good[i] = qualities[i] == Quality.GOOD;
        }
        FlagColumn.code(coder, good);
        Odds fault = new Odds(1);
        for (int i = 0; i < good.length; i++) {
            if (good[i]) {
                qualities[i] = Quality.GOOD;
            } else {
                boolean isFault = coder.bit(fault, 0, qualities[i] == Quality.FAULT ? 1 : 0) == 1;
                qualities[i] = isFault ? Quality.FAULT : Quality.SUSPECT;
            }
        }
        return qualities;
    }

    private static int checksum(byte[] bytes, int size) {
        CRC32 checksum = new CRC32();
        checksum.update(bytes, 0, size);
        return (int) checksum.getValue();
    }
}
