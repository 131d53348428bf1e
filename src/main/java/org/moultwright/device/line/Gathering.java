package org.moultwright.device.line;

import java.nio.charset.StandardCharsets;

/** The bytes of a record gathered so far, up to a bound. Not safe for several threads. */
final class Gathering {
    private final byte[] bytes;
    private int length;
    private boolean tooLong;

    Gathering(int longestBytes) {
        this.bytes = new byte[longestBytes];
    }

    void add(byte next) {
        if (length < bytes.length) {
            bytes[length++] = next;
        } else {
            tooLong = true;
        }
    }

    boolean isEmpty() {
        return length == 0;
    }

    int length() {
        return length;
    }

    /** The record as it stands, whole unless it grew too long, and a new start. */
    Line end() {
        Line line = new Line(text(), !tooLong);
        clear();
        return line;
    }

    /** The record as it stands, broken off, and a new start. */
    Line breakOff() {
        Line line = new Line(text(), false);
        clear();
        return line;
    }

    void clear() {
        length = 0;
        tooLong = false;
    }

    private String text() {
        return new String(bytes, 0, length, StandardCharsets.ISO_8859_1);
    }
}
