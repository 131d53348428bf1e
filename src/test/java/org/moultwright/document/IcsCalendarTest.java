package org.moultwright.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.moultwright.workflow.CalendarEntry;
import org.moultwright.workflow.DocumentException;

class IcsCalendarTest {
    private static final Instant TOLD = Instant.parse("2026-05-03T19:41:07Z");
    private static final String LETTERS = "abc XYZ 0189 ,;\\:\"\n\t°–é猫🕷";

    @TempDir
    private Path folder;

    /** RFC 5545, 3.1, the example of a folded line. */
    @Test
    void aFoldedLineIsTheSameLine() {
        assertThat(ReadCalendar.unfolded(
                        "DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line."))
                .isEqualTo("DESCRIPTION:This is a long description that exists on a long line.");
    }

    /** RFC 5545, 3.3.11, the example of a text of several lines. */
    @Test
    void linesOfTextAreWrittenAsInTheStandard() {
        assertThat(IcsText.escaped("Project XYZ Final Review\nConference Room - 3B\nCome Prepared."))
                .isEqualTo("Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.");
    }

    /** RFC 5545, 3.8.1.5, the example of a description. */
    @Test
    void aDescriptionIsWrittenAsInTheStandard() {
        String words = "Meeting to provide technical review for \"Phoenix\" design.\n"
                + "Happy Face Conference Room. Phoenix design team MUST attend this meeting.\nRSVP to team leader.";
        String published = String.join(
                "\r\n",
                "DESCRIPTION:Meeting to provide technical review for \"Phoenix\"",
                "  design.\\nHappy Face Conference Room. Phoenix design team",
                "  MUST attend this meeting.\\nRSVP to team leader.",
                "");
        assertThat(ReadCalendar.unfolded(IcsText.text("DESCRIPTION", words)))
                .isEqualTo(ReadCalendar.unfolded(published));
    }

    /** RFC 5545, 3.6.1: from 28 June to 8 July 2007 inclusively ends on the 9th, which is not included. */
    @Test
    void severalWholeDaysAreWrittenAsInTheStandard() {
        CalendarEntry festival = new CalendarEntry(
                "festival",
                LocalDate.of(2007, 6, 28),
                LocalDate.of(2007, 7, 8),
                "Festival International de Jazz de Montreal",
                "");
        String written = new String(new IcsCalendar(List.of(festival), TOLD).bytes(), StandardCharsets.UTF_8);
        assertThat(List.of(written.split("\r\n")))
                .contains(
                        "DTSTART;VALUE=DATE:20070628",
                        "DTEND;VALUE=DATE:20070709",
                        "SUMMARY:Festival International de Jazz de Montreal");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void whateverIsWrittenIsReadBack(long seed) {
        Random random = new Random(seed);
        List<CalendarEntry> entries = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            LocalDate first = LocalDate.of(2026, 1, 1).plusDays(random.nextInt(2000));
            entries.add(new CalendarEntry(
                    "brood " + words(random, 5) + i,
                    first,
                    first.plusDays(random.nextInt(60)),
                    "t" + words(random, 90),
                    words(random, 400)));
        }
        List<Map<String, String>> read = ReadCalendar.events(new IcsCalendar(entries, TOLD).bytes());
        assertThat(read).hasSize(entries.size());
        for (int i = 0; i < entries.size(); i++) {
            CalendarEntry entry = entries.get(i);
            Map<String, String> event = read.get(i);
            assertThat(event.get("SUMMARY")).isEqualTo(entry.title());
            assertThat(event.get("DESCRIPTION")).isEqualTo(entry.notes());
            assertThat(ReadCalendar.date(event, "DTSTART")).isEqualTo(entry.first());
            assertThat(ReadCalendar.date(event, "DTEND").minusDays(1)).isEqualTo(entry.last());
            assertThat(event.get("DTSTAMP")).isEqualTo("20260503T194107Z");
        }
        assertThat(read).extracting(event -> event.get("UID")).doesNotHaveDuplicates();
    }

    /** The key alone decides who it is; a later telling has a higher number. */
    @Test
    void aLaterExportIsARevisionOfTheEarlier() {
        LocalDate day = LocalDate.of(2026, 5, 8);
        Map<String, String> before = only(new CalendarEntry("B1/first", day, day, "first slings", "8 May"), TOLD);
        Map<String, String> after = only(
                new CalendarEntry("B1/first", day.plusDays(2), day.plusDays(4), "first L1s", "10 May"),
                TOLD.plusSeconds(60));
        assertThat(after.get("UID")).isEqualTo(before.get("UID")).matches("[0-9a-f-]{36}");
        assertThat(Integer.parseInt(after.get("SEQUENCE"))).isEqualTo(Integer.parseInt(before.get("SEQUENCE")) + 1);
        assertThat(after.get("LAST-MODIFIED")).isGreaterThan(before.get("LAST-MODIFIED"));
    }

    @Test
    void whatNoCalendarMayHoldIsLeftOut() {
        assertThat(IcsText.escaped("a\u0000b\u0007c\r\nd\re\u0085f")).isEqualTo("abc\\ndef");
    }

    @Test
    void itIsSavedWholeOrNotAtAll() throws IOException {
        CalendarEntry entry = new CalendarEntry("k", LocalDate.EPOCH, LocalDate.EPOCH, "t", "n");
        Path file = folder.resolve("moultwright.ics");
        new IcsCalendarFiles().save(List.of(entry), TOLD, file);
        assertThat(ReadCalendar.events(Files.readAllBytes(file))).hasSize(1);
        assertThatExceptionOfType(DocumentException.class)
                .isThrownBy(() -> new IcsCalendarFiles()
                        .save(List.of(entry), TOLD, folder.resolve("gone").resolve("moultwright.ics")))
                .withMessageStartingWith("Not saved: there is no folder");
    }

    private static Map<String, String> only(CalendarEntry entry, Instant told) {
        List<Map<String, String>> events = ReadCalendar.events(new IcsCalendar(List.of(entry), told).bytes());
        assertThat(events).hasSize(1);
        return events.get(0);
    }

    private static String words(Random random, int most) {
        int[] letters = LETTERS.codePoints().toArray();
        int[] words = random.ints(random.nextInt(most), 0, letters.length)
                .map(i -> letters[i])
                .toArray();
        return new String(words, 0, words.length);
    }
}
