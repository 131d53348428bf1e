package org.moultwright.device.line;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.moultwright.device.check.Checksum;

/**
 * Answers of Modbus RTU to a reading of registers, found by the length each tells and by its check. An adapter
 * on USB hands bytes over in bursts, so the silence between records cannot be relied on; it only clears what is
 * left over. What is no answer is given as broken off, but for an echo of the question.
 */
final class ModbusFramer implements Framer {
    private static final int LONGEST_BYTES = 256;
    private static final int EXCEPTION_BYTES = 5;
    private static final int HEAD_AND_CHECK_BYTES = 5;

    /** Far more than an adapter holds a part of a record back. */
    private static final long SILENCE_NANOS = 100_000_000;

    private byte[] waiting = {};
    private byte[] request = {};
    private long lastNanos = Long.MAX_VALUE;

    @Override
    public List<Line> take(byte[] bytes, int count, long nanos) {
        List<Line> records = new ArrayList<>(quiet(nanos));
        lastNanos = nanos;
        int old = waiting.length;
        waiting = Arrays.copyOf(waiting, old + count);
        System.arraycopy(bytes, 0, waiting, old, count);
        cut(records);
        return records;
    }

    @Override
    public List<Line> quiet(long nanos) {
        return nanos - lastNanos >= SILENCE_NANOS || nanos == Long.MAX_VALUE ? giveUp() : List.of();
    }

    @Override
    public List<Line> asked(byte[] question) {
        List<Line> left = giveUp();
        request = question.clone();
        return left;
    }

    private void cut(List<Line> records) {
        int at = 0;
        while (at < waiting.length) {
            int length = lengthAt(at);
            if (length > 0 && at + length <= waiting.length && isSound(at, length)) {
                breakOff(at, records);
                records.add(new Line(text(0, length), true));
                drop(length);
                at = 0;
            } else {
                at++;
            }
        }
        if (waiting.length > LONGEST_BYTES) {
            breakOff(waiting.length - LONGEST_BYTES, records);
        }
    }

    /** How long the answer is that starts here, 0 if none can. */
    private int lengthAt(int at) {
        if (at + 2 >= waiting.length) {
            return 0;
        }
        int bytes = waiting[at + 2] & 0xFF;
        return switch (waiting[at + 1] & 0xFF) {
            case 0x03, 0x04 -> bytes >= 2 && bytes % 2 == 0 ? HEAD_AND_CHECK_BYTES + bytes : 0;
            case 0x83, 0x84 -> EXCEPTION_BYTES;
            default -> 0;
        };
    }

    private boolean isSound(int at, int length) {
        return Checksum.CRC16_MODBUS.endsRightly(Arrays.copyOfRange(waiting, at, at + length));
    }

    private List<Line> giveUp() {
        List<Line> left = new ArrayList<>();
        breakOff(waiting.length, left);
        return left;
    }

    private void breakOff(int count, List<Line> records) {
        byte[] left = Arrays.copyOf(waiting, count);
        if (!isAllZero(left) && !Arrays.equals(left, request)) {
            records.add(new Line(text(0, count), false));
        }
        drop(count);
    }

    /** A port that opens often sends zeros. */
    private static boolean isAllZero(byte[] bytes) {
        return Arrays.equals(bytes, new byte[bytes.length]);
    }

    private void drop(int count) {
        waiting = Arrays.copyOfRange(waiting, count, waiting.length);
    }

    private String text(int from, int length) {
        return new String(waiting, from, length, StandardCharsets.ISO_8859_1);
    }
}
