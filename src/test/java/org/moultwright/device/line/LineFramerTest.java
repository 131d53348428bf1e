package org.moultwright.device.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineFramerTest {
    private static final int LONGEST = 20;

    @ParameterizedTest
    @ValueSource(strings = {"\r", "\n", "\r\n", "\n\r", "\r\n\r\n"})
    void anyLineEndEndsALine(String end) {
        assertThat(texts(LineFramer.start(false, LONGEST), "26.1" + end + "26.2" + end))
                .containsExactly("26.1", "26.2");
    }

    @Test
    void whatComesBeforeTheFirstEndIsDropped() {
        assertThat(texts(LineFramer.start(true, LONGEST), "6.1\r\n26.2\r\n")).containsExactly("26.2");
    }

    @Test
    void aLineMayComeByteByByte() {
        LineFramer framer = LineFramer.start(false, LONGEST);
        List<String> lines = new ArrayList<>();
        for (char next : "26.1\r\n26.2\r\n".toCharArray()) {
            lines.addAll(texts(framer, String.valueOf(next)));
        }
        assertThat(lines).containsExactly("26.1", "26.2");
    }

    @Test
    void nulIsDropped() {
        assertThat(texts(LineFramer.start(false, LONGEST), "\0\0" + "26\0.1\0\r\n\0"))
                .containsExactly("26.1");
    }

    @Test
    void bytesAreKeptOneToOne() {
        assertThat(texts(LineFramer.start(false, LONGEST), "26.1\u00b0C \u00f8\u00ff\n"))
                .containsExactly("26.1\u00b0C \u00f8\u00ff");
    }

    @Test
    void aLineTooLongIsCutAndSaysSo() {
        List<Line> lines = take(LineFramer.start(false, 4), "12345678\n26.1\n");
        assertThat(lines).containsExactly(new Line("1234", false), new Line("26.1", true));
    }

    @Test
    void anUnfinishedLineIsNotGiven() {
        assertThat(texts(LineFramer.start(false, LONGEST), "26.1\n26.")).containsExactly("26.1");
    }

    private static List<String> texts(LineFramer framer, String input) {
        return take(framer, input).stream().map(Line::text).toList();
    }

    private static List<Line> take(LineFramer framer, String input) {
        byte[] bytes = input.getBytes(StandardCharsets.ISO_8859_1);
        return framer.take(bytes, bytes.length, 0);
    }
}
