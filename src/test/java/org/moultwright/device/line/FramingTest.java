package org.moultwright.device.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.device.check.Hex;

class FramingTest {
    private static final int LONGEST = 20;
    private static final long MILLI = 1_000_000;

    @ParameterizedTest
    @ValueSource(
            strings = {"", "words", "lines 1", "from 2 to 3", "fixed 0", "fixed 1000", "gap 0 ms", "gap 5", "line 2"})
    void whatIsNoFramingIsRefused(String words) {
        assertThatThrownBy(() -> Framing.of(words)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void linesAreTheUsual() {
        assertThat(texts(Framing.of("line").start(false, LONGEST), "26.1\r\n26.2\r\n"))
                .containsExactly("26.1", "26.2");
    }

    @Test
    void linesAreJoinedToARecordAndTheNextQuestionStartsAnew() {
        Framer framer = Framing.of("lines 2").start(false, LONGEST);
        assertThat(texts(framer, "26.1\r70%\r26.2\r")).containsExactly("26.1\n70%");
        assertThat(framer.asked(new byte[0])).containsExactly(new Line("26.2", false));
        assertThat(texts(framer, "26.3\r71%\r")).containsExactly("26.3\n71%");
        assertThat(framer.asked(new byte[0])).isEmpty();
    }

    @Test
    void marksStartAndEndARecord() {
        Framer framer = Framing.of("from 02 to 03").start(true, LONGEST);
        assertThat(texts(framer, "6.1\u0003\r\n\u0002" + "26\0.2\u0003\r\n")).containsExactly("26.2");
    }

    @Test
    void aStartWithinARecordBreaksItOff() {
        Framer framer = Framing.of("from 02 to 03").start(false, LONGEST);
        assertThat(take(framer, "\u000226.\u0002\u000226.2\u0003", 0))
                .containsExactly(new Line("26.", false), new Line("26.2", true));
    }

    @Test
    void aMarkedRecordTooLongIsCutAndSaysSo() {
        Framer framer = Framing.of("from 02 to 03").start(false, 4);
        assertThat(take(framer, "\u000212345678\u0003\u000226.2\u0003", 0))
                .containsExactly(new Line("1234", false), new Line("26.2", true));
    }

    @Test
    void aFixedLengthIsCountedFromASilence() {
        Framer framer = Framing.of("fixed 4").start(true, LONGEST);
        assertThat(take(framer, "6.1", 0)).isEmpty();
        assertThat(take(framer, "26.226.326", 100 * MILLI))
                .containsExactly(new Line("26.2", true), new Line("26.3", true));
        assertThat(framer.quiet(120 * MILLI)).isEmpty();
        assertThat(framer.quiet(200 * MILLI)).containsExactly(new Line("26", false));
        assertThat(take(framer, "26.4", 300 * MILLI)).containsExactly(new Line("26.4", true));
    }

    @Test
    void aGapEndsARecord() {
        Framer framer = Framing.of("gap 5 ms").start(true, LONGEST);
        assertThat(take(framer, "6.1", 0)).isEmpty();
        assertThat(take(framer, "26", 10 * MILLI)).isEmpty();
        assertThat(take(framer, ".2", 12 * MILLI)).isEmpty();
        assertThat(take(framer, "26.3", 20 * MILLI)).containsExactly(new Line("26.2", true));
        assertThat(framer.quiet(30 * MILLI)).containsExactly(new Line("26.3", true));
        assertThat(framer.quiet(40 * MILLI)).isEmpty();
    }

    @Test
    void memoryStaysBounded() {
        for (String words : List.of("line", "lines 2", "from 02 to 03", "fixed 9", "gap 5 ms", "modbus")) {
            Framer framer = Framing.of(words).start(false, LONGEST);
            String noise = "\u0002" + "x".repeat(1000);
            List<Line> lines = new ArrayList<>();
            for (int i = 0; i < 100; i++) {
                lines.addAll(take(framer, noise, 0));
            }
            assertThat(lines).as(words).allMatch(line -> line.text().length() <= 1001);
        }
    }

    @Test
    void aStreamIsCutAsAWhole() {
        byte[] frames = Hex.bytes("010404013102222ACE018402C2C1");
        assertThat(Framing.of("modbus").cut(frames, LONGEST)).hasSize(2).allMatch(Line::whole);
        assertThat(Framing.of("line").cut("26.1\n26.2\n".getBytes(StandardCharsets.ISO_8859_1), LONGEST))
                .hasSize(2);
    }

    private static List<String> texts(Framer framer, String input) {
        return take(framer, input, 0).stream().map(Line::text).toList();
    }

    private static List<Line> take(Framer framer, String input, long nanos) {
        byte[] bytes = input.getBytes(StandardCharsets.ISO_8859_1);
        return framer.take(bytes, bytes.length, nanos);
    }
}
