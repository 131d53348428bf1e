package org.moultwright.device.link;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.moultwright.device.check.Hex;

/** Bytes as no instrument sends them, and as one does on a wire with noise. */
public final class FuzzedBytes {
    private static final List<String> SCRAPS = List.of(
            "26.1",
            "26,1",
            "T=",
            "H=",
            "-127",
            "85.0",
            "9.9E37",
            "1e300",
            "\r\n",
            "\n",
            "\r",
            "C",
            "F",
            "%",
            ";",
            " ",
            "-",
            "\u00c2\u00b0",
            "\u00f8",
            "\u00e2\u0088\u0092",
            "nan",
            "Err.1",
            "OL",
            ",",
            ".",
            "7",
            "\0",
            "11111111111111111111111111111111",
            "T=T=T=T=T=T=T=T=T=T=",
            "                                ",
            "\u0002S ",
            "\u0002",
            "[C]",
            "[%RH]",
            "{",
            "}",
            "\"t\":",
            "\"h\":",
            ":",
            "[",
            "id=",
            "seq=4;",
            "72014B467FFF0E1057",
            "28DC6674050000B9",
            "666693",
            "A01;",
            "004711;",
            "26.1\n",
            "{\"t\":26.1}\n",
            "26,1;70\n",
            "+26.1C\r");
    private static final List<String> FRAMES = List.of(
            "01040401310222222A",
            "010404013102222ACE",
            "01040841CD999A4294666646F6",
            "018402C2C1",
            "0104000000027",
            "0104");

    private FuzzedBytes() {}

    /** Noise, a frame, or scraps of lines of all forms. */
    public static byte[] of(Random random) {
        if (random.nextInt(3) == 0) {
            byte[] noise = new byte[random.nextInt(300)];
            random.nextBytes(noise);
            return noise;
        }
        if (random.nextInt(4) == 0) {
            String digits = FRAMES.get(random.nextInt(FRAMES.size()));
            return Hex.bytes(digits.substring(0, digits.length() / 2 * 2));
        }
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(30); i > 0; i--) {
            text.append(SCRAPS.get(random.nextInt(SCRAPS.size())));
        }
        return text.toString().getBytes(StandardCharsets.ISO_8859_1);
    }

    /** What an instrument of a bundled form says, with one byte in fifty changed. */
    public static byte[] noisy(String code, Random random) {
        byte[] stream = ProfileStreams.of(code);
        for (int i = 0; i < stream.length; i++) {
            stream[i] = random.nextInt(50) == 0 ? (byte) random.nextInt(256) : stream[i];
        }
        return stream;
    }
}
