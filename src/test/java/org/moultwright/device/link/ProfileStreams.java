package org.moultwright.device.link;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.moultwright.device.check.Hex;

/** What an instrument of each bundled form says while it measures 26.1 °C and thereabouts. */
public final class ProfileStreams {
    private static final Map<String, String> LINES = Map.ofEntries(
            Map.entry("plain-number", "26.1\r\n"),
            Map.entry("key-value", "T=26.1C H=70%\r\n"),
            Map.entry("plain-fahrenheit", "79.0F\r\n"),
            Map.entry("bracketed-units", "26.10 [C]70.00 [%RH]\r\n"),
            Map.entry("stx-integers", "\u0002S 0261,0255\r\n"),
            Map.entry("semicolon-record", "A01;25.7;C;74.2;%RH;004711;3E\r\n"),
            Map.entry("letter-poll", "+26.1000C\r"),
            Map.entry("letter-poll-humidity", "+26.1000C\r70%\r"),
            Map.entry("scpi-poll", "+2.61000000E+01\n"),
            Map.entry("json", "{\"t\":26.1,\"h\":70}\n"),
            Map.entry("comma-separated", "26.1,70.0\r\n"),
            Map.entry("decimal-comma", "26,1;70,0\r\n"),
            Map.entry("one-wire-scratchpad", "28DC6674050000B9 91014B467FFF0F1025\r\n"),
            Map.entry("hex-words", "666693 666693\r\n"));
    private static final Map<String, String> FRAMES =
            Map.of("modbus-int16", "010404013102222ACE", "modbus-float32", "01040841CD999A4294666646F6");
    private static final int RECORDS = 20;

    private ProfileStreams() {}

    public static byte[] of(String code) {
        byte[] record = FRAMES.containsKey(code)
                ? Hex.bytes(FRAMES.get(code))
                : LINES.get(code).getBytes(StandardCharsets.ISO_8859_1);
        ByteArrayOutputStream stream = new ByteArrayOutputStream();
        for (int i = 0; i < RECORDS; i++) {
            stream.writeBytes(record);
        }
        return stream.toByteArray();
    }
}
