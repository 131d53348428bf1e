package org.moultwright.store.reading;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;
import org.moultwright.domain.ReadingSeries;

/**
 * Raw lines of the readings of an hour as they came over the wire, without loss. What a line says of its reading
 * stands in the reading already, so that only its {@link LineForm} is kept, the same for most lines, deflated.
 */
final class PackedLines {
    private static final int FORMAT = 2;
    private static final String NO_LINE = "";

    private PackedLines() {}

    /** @param linesByEpochMillis of some or all of the readings, by their millisecond */
    static byte[] pack(NavigableMap<Long, String> linesByEpochMillis, ReadingSeries readings) {
        Map<String, Integer> forms = new LinkedHashMap<>(Map.of(NO_LINE, 0));
        long[] formNos = new long[readings.size()];
        for (int i = 0; i < formNos.length; i++) {
            String line = linesByEpochMillis.get(readings.epochMillis(i));
            formNos[i] = line == null ? 0 : forms.computeIfAbsent(form(line, readings, i), form -> forms.size());
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write(FORMAT);
        try (DataOutputStream out = new DataOutputStream(new DeflaterOutputStream(bytes))) {
            VarNumbers.write(out, forms.size());
            for (String form : forms.keySet()) {
                writeText(out, form);
            }
            BitWriter numbers = new BitWriter(FORMAT);
            LongColumn.write(numbers, formNos);
            out.write(numbers.written());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot happen in memory", e);
        }
        return bytes.toByteArray();
    }

    /** @throws IllegalArgumentException if the bytes are no packed lines of these readings, or damaged ones */
    static NavigableMap<Long, String> unpack(byte[] packed, ReadingSeries readings) {
        boolean isOfFirstForm = packed.length > 0 && packed[0] != FORMAT;
        int headBytes = isOfFirstForm ? 0 : 1;
        try (DataInputStream in = new DataInputStream(new InflaterInputStream(
                new ByteArrayInputStream(packed, headBytes, Math.max(0, packed.length - headBytes))))) {
            return isOfFirstForm ? linesOfFirstForm(in) : lines(in, readings);
        } catch (IOException | ArithmeticException | IndexOutOfBoundsException e) {
            throw new IllegalArgumentException("raw lines cannot be unpacked: " + e.getMessage(), e);
        }
    }

    private static NavigableMap<Long, String> lines(DataInputStream in, ReadingSeries readings) throws IOException {
        List<String> forms = new ArrayList<>();
        for (long left = VarNumbers.read(in); left > 0; left--) {
            forms.add(readText(in));
        }
        byte[] numbers = in.readAllBytes();
        long[] formNos = LongColumn.read(new BitReader(numbers, 1, numbers.length), readings.size());
        NavigableMap<Long, String> lines = new TreeMap<>();
        for (int i = 0; i < formNos.length; i++) {
            if (formNos[i] != 0) {
                LineForm form = new LineForm(forms.get(Math.toIntExact(formNos[i])));
                lines.put(
                        readings.epochMillis(i),
                        form.line(readings.temperatureCelsius(i), readings.humidityPercent(i)));
            }
        }
        return lines;
    }

    private static NavigableMap<Long, String> linesOfFirstForm(DataInputStream in) throws IOException {
        NavigableMap<Long, String> lines = new TreeMap<>();
        long epochMillis = 0;
        for (long left = VarNumbers.read(in); left > 0; left--) {
            epochMillis += VarNumbers.read(in);
            lines.put(epochMillis, readText(in));
        }
        return lines;
    }

    private static String form(String line, ReadingSeries readings, int i) {
        return LineForm.of(line, readings.temperatureCelsius(i), readings.humidityPercent(i))
                .text();
    }

    private static void writeText(DataOutputStream out, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        VarNumbers.write(out, bytes.length);
        out.write(bytes);
    }

    private static String readText(DataInputStream in) throws IOException {
        return new String(in.readNBytes(Math.toIntExact(VarNumbers.read(in))), StandardCharsets.UTF_8);
    }
}
