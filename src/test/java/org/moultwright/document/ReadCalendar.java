package org.moultwright.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** An iCalendar file as another program reads it, strictly by RFC 5545. */
public final class ReadCalendar {
    private ReadCalendar() {}

    /** The properties of each event, by name and parameters; text is read back as it was meant. */
    public static List<Map<String, String>> events(byte[] bytes) {
        String stream = new String(bytes, StandardCharsets.UTF_8);
        assertThat(stream).endsWith("\r\n");
        for (String line : stream.substring(0, stream.length() - 2).split("\r\n", -1)) {
            assertThat(line).doesNotContain("\r", "\n").isNotEmpty();
            assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75);
        }
        List<String> lines = List.of(unfolded(stream).split("\r\n"));
        assertThat(lines)
                .startsWith("BEGIN:VCALENDAR", "VERSION:2.0")
                .endsWith("END:VCALENDAR")
                .anyMatch(line -> line.startsWith("PRODID:"));
        List<Map<String, String>> events = new ArrayList<>();
        Map<String, String> event = new LinkedHashMap<>();
        for (String line : lines) {
            switch (line) {
                case "BEGIN:VEVENT" -> event = new LinkedHashMap<>();
                case "END:VEVENT" -> events.add(event);
                default -> {
                    int colon = line.indexOf(':');
                    assertThat(colon).as(line).isPositive();
                    assertThat(event.put(line.substring(0, colon), unescaped(line.substring(colon + 1))))
                            .as("twice in an event: %s", line)
                            .isNull();
                }
            }
        }
        return events;
    }

    static String unfolded(String stream) {
        return stream.replace("\r\n ", "").replace("\r\n\t", "");
    }

    static String unescaped(String value) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < value.length(); i++) {
            char letter = value.charAt(i);
            if (letter == '\\') {
                char next = value.charAt(++i);
                assertThat(next).isIn('\\', ';', ',', 'n', 'N');
                words.append(next == 'n' || next == 'N' ? '\n' : next);
            } else {
                assertThat(letter).as("unescaped in %s", value).isNotIn(';', ',');
                words.append(letter);
            }
        }
        return words.toString();
    }

    public static LocalDate date(Map<String, String> event, String name) {
        return LocalDate.parse(event.get(name + ";VALUE=DATE"), DateTimeFormatter.BASIC_ISO_DATE);
    }
}
