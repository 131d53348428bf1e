package org.moultwright.store.reading;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutput;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.IntToDoubleFunction;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;

/**
 * A series of readings in few bytes, without loss: column by column, numbers as steps from the one before,
 * then deflated. Even logging at a fixed interval of slowly changing air costs about a byte a reading.
 */
final class PackedSeries {
    private static final int FORMAT = 1;

    private PackedSeries() {}

    static byte[] pack(ReadingSeries series) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(FORMAT);
        try (DataOutputStream out = new DataOutputStream(new DeflaterOutputStream(bytes))) {
            VarNumbers.write(out, series.size());
            writeTimes(out, series);
            PackedColumn.write(out, column(series, series::temperatureCelsius));
            PackedColumn.write(out, column(series, series::humidityPercent));
            writeQualities(out, series);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot happen in memory", e);
        }
        return bytes.toByteArray();
    }

    /**
     * Adds the readings to a builder, in their order.
     *
     * @throws IllegalArgumentException if the bytes are no packed series, or a damaged one
     */
    static void unpackInto(ReadingSeries.Builder builder, byte[] packed) {
        ByteArrayInputStream bytes = new ByteArrayInputStream(packed);
        int format = bytes.read();
        if (format != FORMAT) {
            throw new IllegalArgumentException("series has format " + format + " but must have " + FORMAT);
        }
        try (DataInputStream in = new DataInputStream(new InflaterInputStream(bytes))) {
            int size = Math.toIntExact(VarNumbers.read(in));
            long[] times = readTimes(in, size);
            double[] temperatures = PackedColumn.read(in, size);
            double[] humidities = PackedColumn.read(in, size);
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

    private static double[] column(ReadingSeries series, IntToDoubleFunction value) {
        double[] column = new double[series.size()];
        for (int i = 0; i < column.length; i++) {
            column[i] = value.applyAsDouble(i);
        }
        return column;
    }

    private static void writeTimes(DataOutput out, ReadingSeries series) throws IOException {
        long previous = 0;
        long previousStep = 0;
        for (int i = 0; i < series.size(); i++) {
            long step = series.epochMillis(i) - previous;
            VarNumbers.write(out, step - previousStep);
            previous = series.epochMillis(i);
            previousStep = step;
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

    private static void writeQualities(DataOutput out, ReadingSeries series) throws IOException {
        for (int i = 0; i < series.size(); i++) {
            out.writeByte(
                    switch (series.quality(i)) {
                        case GOOD -> 'g';
                        case SUSPECT -> 's';
                        case FAULT -> 'f';
                    });
        }
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
