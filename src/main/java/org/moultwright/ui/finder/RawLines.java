package org.moultwright.ui.finder;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** What came over a wire, as lines to be read by eye: text as it is, anything else as hexadecimal digits. */
final class RawLines {
    private static final int MOST_LINES = 200;
    private static final int MOST_BYTES = 64 * 1024;
    private static final int LONGEST = 120;
    private static final HexFormat HEX = HexFormat.ofDelimiter(" ").withUpperCase();

    private final ObservableList<String> lines = FXCollections.observableArrayList();
    private final ByteArrayOutputStream all = new ByteArrayOutputStream();
    private final ByteArrayOutputStream open = new ByteArrayOutputStream();
    private boolean isOpenShown;

    ObservableList<String> lines() {
        return lines;
    }

    /** All that was heard, the beginning of it where that was too much. */
    byte[] bytes() {
        return all.toByteArray();
    }

    void clear() {
        lines.clear();
        all.reset();
        open.reset();
        isOpenShown = false;
    }

    void add(byte[] bytes) {
        all.write(bytes, 0, Math.min(bytes.length, MOST_BYTES - all.size()));
        for (byte each : bytes) {
            if (each == '\n' || each == '\r' || open.size() >= LONGEST) {
                end();
            }
            if (each != '\n' && each != '\r') {
                open.write(each);
            }
        }
        if (open.size() > 0) {
            show();
        }
    }

    private void end() {
        if (open.size() > 0) {
            show();
            open.reset();
            isOpenShown = false;
        }
    }

    /** The line that is not ended yet is shown as far as it has come. */
    private void show() {
        String words = words(open.toByteArray());
        if (isOpenShown) {
            lines.set(lines.size() - 1, words);
        } else {
            lines.add(words);
            isOpenShown = true;
        }
        if (lines.size() > MOST_LINES) {
            lines.remove(0);
        }
    }

    private static String words(byte[] line) {
        String text = new String(line, StandardCharsets.ISO_8859_1);
        boolean isText = text.chars().allMatch(each -> each >= ' ' && each != 0x7F && !(each > 0x7F && each < 0xA0));
        return isText ? text : HEX.formatHex(Arrays.copyOf(line, line.length));
    }
}
