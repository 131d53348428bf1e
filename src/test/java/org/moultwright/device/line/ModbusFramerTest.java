package org.moultwright.device.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.moultwright.device.check.Hex;

/** Frames after the examples of the Modbus specification, as public test suites print them. */
class ModbusFramerTest {
    private static final String TWO_REGISTERS = "010404013102222ACE";
    private static final String FOUR_REGISTERS = "110306AE415652434049AD";
    private static final String EXCEPTION = "018302C0F1";
    private static final long SILENCE_NANOS = 200_000_000;

    private final ModbusFramer framer = new ModbusFramer();

    @Test
    void answersAndExceptionsAreCutByTheLengthTheyTell() {
        assertThat(take(TWO_REGISTERS + FOUR_REGISTERS + EXCEPTION))
                .containsExactly(whole(TWO_REGISTERS), whole(FOUR_REGISTERS), whole(EXCEPTION));
    }

    /** An adapter on USB hands a frame over in pieces, with pauses longer than the gap between frames. */
    @Test
    void anAnswerMayComeByteByByte() {
        List<Line> records = new ArrayList<>();
        for (int i = 0; i < TWO_REGISTERS.length(); i += 2) {
            records.addAll(framer.take(Hex.bytes(TWO_REGISTERS.substring(i, i + 2)), 1, i * 5_000_000L));
        }
        assertThat(records).containsExactly(whole(TWO_REGISTERS));
    }

    @Test
    void aWrongCheckIsBrokenOffAtTheNextAnswer() {
        String wrong = "010404013102222ACF";
        assertThat(take(wrong + TWO_REGISTERS)).containsExactly(broken(wrong), whole(TWO_REGISTERS));
    }

    @Test
    void aPartOfAnAnswerIsBrokenOffByASilence() {
        assertThat(take("0104040131")).isEmpty();
        assertThat(framer.quiet(SILENCE_NANOS)).containsExactly(broken("0104040131"));
        assertThat(framer.take(Hex.bytes(TWO_REGISTERS), 9, SILENCE_NANOS)).containsExactly(whole(TWO_REGISTERS));
    }

    @Test
    void anEchoOfTheQuestionIsPassedOver() {
        byte[] question = Hex.bytes("010400010002200B");
        assertThat(framer.asked(question)).isEmpty();
        assertThat(take(Hex.of(question) + TWO_REGISTERS)).containsExactly(whole(TWO_REGISTERS));
    }

    @Test
    void zerosOfAPortThatOpensArePassedOver() {
        assertThat(take("0000" + TWO_REGISTERS)).containsExactly(whole(TWO_REGISTERS));
    }

    @Test
    void noiseBetweenAnswersLosesNone() {
        for (int seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            ModbusFramer noisy = new ModbusFramer();
            List<Line> records = new ArrayList<>();
            for (int i = 0; i < 20; i++) {
                byte[] noise = new byte[random.nextInt(12)];
                random.nextBytes(noise);
                records.addAll(noisy.take(noise, noise.length, 0));
                records.addAll(noisy.take(Hex.bytes(TWO_REGISTERS), 9, 0));
            }
            assertThat(records.stream().filter(whole(TWO_REGISTERS)::equals))
                    .as("seed %d", seed)
                    .hasSize(20);
        }
    }

    private List<Line> take(String digits) {
        byte[] bytes = Hex.bytes(digits);
        return framer.take(bytes, bytes.length, 0);
    }

    private static Line whole(String digits) {
        return new Line(new String(Hex.bytes(digits), StandardCharsets.ISO_8859_1), true);
    }

    private static Line broken(String digits) {
        return new Line(whole(digits).text(), false);
    }
}
