package org.moultwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.workflow.DateOrder;

class WrittenTimeTest {
    /** What may be written, said a second way: an expression. */
    private static final Pattern WRITTEN =
            Pattern.compile("\\s*(\\d{1,4})[-/.](\\d{1,2})[-/.](\\d{1,4})\\.?(?:[Tt]|,?\\s+)"
                    + "(\\d{1,2})[:.h](\\d{2})(?:[:.](\\d{2})(?:[.,](\\d{1,9}))?)?\\s*([AaPp]\\.?[Mm]\\.?)?\\s*"
                    + "(Z|z|[+-]\\d{2}:?\\d{2})?\\s*");

    private static final Pattern NUMBER = Pattern.compile("(\\d{1,15})(?:[.,](\\d{0,15}))?");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-05-03 20:41            | YEAR_FIRST  | 2026-05-03T20:41     |",
                "2026-05-03T20:41:07.25Z     | YEAR_FIRST  | 2026-05-03T20:41:07.25 | Z",
                "3.5.2026, 20.41             | DAY_FIRST   | 2026-05-03T20:41     |",
                "05/03/26 8:41:07 PM         | MONTH_FIRST | 2026-05-03T20:41:07  |",
                "05/03/26 12:41 a.m.         | MONTH_FIRST | 2026-05-03T00:41     |",
                "3-5-26 20h41                | DAY_FIRST   | 2026-05-03T20:41     |",
                "2026-05-03 20:41 +0530      | YEAR_FIRST  | 2026-05-03T20:41     | +05:30",
                "2026-05-03 20:41:07,000000001-02:00 | YEAR_FIRST | 2026-05-03T20:41:07.000000001 | -02:00",
                "2026-05-03 20:41 +9900      | YEAR_FIRST  | 2026-05-03T20:41     |",
            })
    void timesAreReadAsLoggersWriteThem(String cell, DateOrder order, LocalDateTime local, String offset) {
        assertThat(WrittenTime.of(cell, order))
                .contains(new WrittenTime(local, Optional.ofNullable(offset).map(ZoneOffset::of)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-05-03",
                "2026-05-03 20",
                "2026-05-03 20:4",
                "2026-05-03 20:41:7",
                "2026-05-03 25:41",
                "2026-02-30 20:41",
                "05/03/26 13:41 pm",
                "05/03/26 1:41 p",
                "2026-05-03 20:41 +053",
                "2026-05-03 20:41 +05:",
                "2026-05-03 20:41:07.1234567890",
                "20261-05-03 20:41",
                "2026-05-03,20:41",
                "20:41 2026-05-03",
            })
    void whatIsNoTimeIsNone(String cell) {
        for (DateOrder order : DateOrder.values()) {
            assertThat(WrittenTime.of(cell, order)).isEmpty();
        }
    }

    @Test
    void noTextIsReadThatTheExpressionDoesNotKnow() {
        SplittableRandom random = new SplittableRandom(26);
        int read = 0;
        for (int trial = 0; trial < 200_000; trial++) {
            String cell = disturbed("3.05.2026 08:41:07.5 pm +02:00", random);
            for (DateOrder order : DateOrder.values()) {
                boolean isRead = WrittenTime.of(cell, order).isPresent();
                read += isRead ? 1 : 0;
                if (isRead) {
                    assertThat(WRITTEN.matcher(cell).matches()).as(cell).isTrue();
                }
            }
            boolean isClock = WrittenTime.isClock(cell.substring(Math.min(cell.length(), 10)));
            String dated =
                    "2026-05-03 " + cell.substring(Math.min(cell.length(), 10)).stripLeading();
            assertThat(isClock).as(dated).isEqualTo(WRITTEN.matcher(dated).matches());
        }
        assertThat(read).isGreaterThan(10_000);
    }

    @Test
    void numbersAreTheSameAsTheirTextSays() {
        SplittableRandom random = new SplittableRandom(27);
        for (int trial = 0; trial < 200_000; trial++) {
            String cell = disturbed("27.45", random);
            if (NUMBER.matcher(cell).matches()) {
                double expected = Double.parseDouble(cell.replace(',', '.'));
                assertThat(MeasuredText.number(cell)).as(cell).hasValue(expected);
            }
        }
        assertThat(MeasuredText.number("9999999.9999999")).hasValue(9999999.9999999);
        assertThat(MeasuredText.number("0.0000001")).hasValue(1e-7);
    }

    /** A text with up to four characters changed, put in or taken out. */
    private static String disturbed(String text, SplittableRandom random) {
        String characters = "0123456789.,:/-+ TtZzAaPpMmh";
        StringBuilder cell = new StringBuilder(text);
        for (int change = random.nextInt(5); change > 0 && !cell.isEmpty(); change--) {
            int at = random.nextInt(cell.length());
            char other = characters.charAt(random.nextInt(characters.length()));
            switch (random.nextInt(3)) {
                case 0 -> cell.setCharAt(at, other);
                case 1 -> cell.insert(at, other);
                default -> cell.deleteCharAt(at);
            }
        }
        return cell.toString();
    }
}
