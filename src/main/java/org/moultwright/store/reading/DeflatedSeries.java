package org.moultwright.store.reading;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.util.zip.InflaterInputStream;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;

/**
 * The first form of packed readings, still read and no longer written: columns of steps, deflated. The next
 * reading that comes into such an hour brings it into the present form.
 */
final class DeflatedSeries {
    /** The first byte. */
    static final int FORMAT = 1;

    private DeflatedSeries() {}

    /**
     * Adds the readings to a builder, in their order.
     *
     * @throws IllegalArgumentException if the bytes are no packed series, or a damaged one
     */
    static void unpackInto(ReadingSeries.Builder builder, byte[] packed) {
        ByteArrayInputStream bytes = new ByteArrayInputStream(packed);
        bytes.skip(1);
        try (DataInputStream in = new DataInputStream(new InflaterInputStream(bytes))) {
            int size = Math.toIntExact(VarNumbers.read(in));
            long[] times = readTimes(in, size);
            double[] temperatures = SteppedColumn.read(in, size);
            double[] humidities = SteppedColumn.read(in, size);
            Quality[] qualities = readQualities(in, size);
            requireEnd(in);
            for (int i = 0; i < size; i++) {
                builder.add(times[i], temperatures[i], humidities[i], qualities[i]);
            }
        } catch (IOException | ArithmeticException | NegativeArraySizeException e) {
            throw new IllegalArgumentException("series cannot be unpacked: " + e.getMessage(), e);
        }
    }

    /** Reading on to the end makes the checksum of the deflated bytes count. */
    private static void requireEnd(DataInputStream in) throws IOException {
        if (in.read() != -1) {
            throw new IOException("bytes are left over");
        }
    }

    private static long[] readTimes(DataInputStream in, int size) throws IOException {
        long[] times = new long[size];
        long time = 0;
        long step = 0;
        for (int i = 0; i < size; i++) {
            step += VarNumbers.read(in);
            time += step;
            times[i] = time;
        }
        return times;
    }

    private static Quality[] readQualities(DataInputStream in, int size) throws IOException {
        Quality[] qualities = new Quality[size];
        for (int i = 0; i < size; i++) {
            int letter = in.readUnsignedByte();
            qualities[i] = switch (letter) {
                case 'g' -> Quality.GOOD;
                case 's' -> Quality.SUSPECT;
                case 'f' -> Quality.FAULT;
                default -> throw new IOException("quality " + letter + " is not known");
            };
        }
        return qualities;
    }
}
