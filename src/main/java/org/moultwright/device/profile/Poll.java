package org.moultwright.device.profile;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.moultwright.device.check.Checksum;
import org.moultwright.device.check.Hex;
import org.moultwright.domain.Require;

/** A question put to an instrument that speaks only when asked. Immutable. */
public final class Poll {
    private static final Pattern WORDS = Pattern.compile(
            "(?:\"(?<text>.+)\"|bytes (?<bytes>[0-9A-Fa-f ]+)|modbus (?<modbus>\\d+ \\d+ \\d+ \\d+)) every (?<every>\\d{1,5}) s");
    private static final String EXAMPLE = "\"READ?\\n\" every 10 s; or: bytes 01 0D every 10 s;"
            + " or: modbus 1 4 0 2 every 10 s (address, function, first register, how many)";

    private final byte[] request;
    private final Duration every;

    private Poll(byte[] request, Duration every) {
        this.request = request;
        this.every = every;
    }

    static Poll of(String declared) {
        Matcher words = Words.matched(WORDS, declared, EXAMPLE);
        int seconds = Integer.parseInt(words.group("every"));
        Require.within("poll interval in s", seconds, 1, 3600);
        return new Poll(request(words), Duration.ofSeconds(seconds));
    }

    /** What is sent. */
    public byte[] request() {
        return request.clone();
    }

    /** How long from one question to the next. */
    public Duration every() {
        return every;
    }

    private static byte[] request(Matcher words) {
        if (words.group("text") != null) {
            return Words.unescaped(words.group("text")).getBytes(StandardCharsets.ISO_8859_1);
        }
        return words.group("bytes") != null
                ? Hex.bytes(words.group("bytes"))
                : readRegisters(words.group("modbus").split(" ", -1));
    }

    /** Modbus application protocol: read holding registers (3) or input registers (4). */
    private static byte[] readRegisters(String[] numbers) {
        int address = within("Modbus address", numbers[0], 1, 247);
        int function = within("Modbus function", numbers[1], 3, 4);
        int register = within("first register", numbers[2], 0, 0xFFFF);
        int count = within("number of registers", numbers[3], 1, 125);
        byte[] question = ByteBuffer.allocate(6)
                .put((byte) address)
                .put((byte) function)
                .putShort((short) register)
                .putShort((short) count)
                .array();
        return ByteBuffer.allocate(8)
                .put(question)
                .put(Checksum.CRC16_MODBUS.checkOf(question))
                .array();
    }

    private static int within(String field, String value, int lowest, int highest) {
        return (int) Require.within(field, Words.number(value), lowest, highest);
    }
}
