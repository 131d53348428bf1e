package org.moultwright.store.reading;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/** Raw lines as they came over the wire, by the instant of their reading, deflated together. */
final class PackedLines {
    private PackedLines() {}

    static byte[] pack(NavigableMap<Long, String> linesByEpochMillis) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(new DeflaterOutputStream(bytes))) {
            VarNumbers.write(out, linesByEpochMillis.size());
            long previous = 0;
            for (Map.Entry<Long, String> line : linesByEpochMillis.entrySet()) {
                byte[] text = line.getValue().getBytes(StandardCharsets.UTF_8);
                VarNumbers.write(out, line.getKey() - previous);
                VarNumbers.write(out, text.length);
                out.write(text);
                previous = line.getKey();
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot happen in memory", e);
        }
        return bytes.toByteArray();
    }

    /** @throws IllegalArgumentException if the bytes are no packed lines, or damaged ones */
    static NavigableMap<Long, String> unpack(byte[] packed) {
        NavigableMap<Long, String> lines = new TreeMap<>();
        try (DataInputStream in = new DataInputStream(new InflaterInputStream(new ByteArrayInputStream(packed)))) {
            long size = VarNumbers.read(in);
            long epochMillis = 0;
            for (long i = 0; i < size; i++) {
                epochMillis += VarNumbers.read(in);
                byte[] text = in.readNBytes(Math.toIntExact(VarNumbers.read(in)));
                lines.put(epochMillis, new String(text, StandardCharsets.UTF_8));
            }
        } catch (IOException | ArithmeticException e) {
            throw new IllegalArgumentException("raw lines cannot be unpacked: " + e.getMessage(), e);
        }
        return lines;
    }
}
