package org.moultwright.ui.intake;

import java.util.Locale;
import org.moultwright.domain.Reading;
import org.moultwright.text.DayWords;
import org.moultwright.workflow.ReadingFiles.Row;
import org.moultwright.workflow.TakeInReadings;

/** What is said of a file of readings. */
final class FileWords {
    private FileWords() {}

    /** "P-9 in box 1: 1 000 readings, 900 of them new. 2 rows are none." */
    static String takenIn(String probe, String container, TakeInReadings.Result result) {
        String readings = result.added() == 0
                ? "all " + counted(result.readings()) + " readings were here already"
                : result.added() == result.readings()
                        ? counted(result.readings()) + " readings taken in"
                        : counted(result.readings()) + " readings, " + counted(result.added()) + " of them new";
        String unused = result.unused() == 0
                ? ""
                : " " + counted(result.unused()) + (result.unused() == 1 ? " row is none." : " rows are none.");
        return "%s in %s: %s.%s".formatted(probe, container, readings, unused);
    }

    static String failed(RuntimeException fault) {
        return String.valueOf(fault.getMessage());
    }

    /** "3 May, 20:41: 26.4 °C, 71 %", or why the row is no reading. */
    static String understood(Row row, DayWords days) {
        return row.reading()
                .map(reading -> days.day(reading.takenAt()) + " "
                        + days.date(reading.takenAt()).getYear() + ", " + days.clock(reading.takenAt()) + ": "
                        + air(reading))
                .orElse(row.reason().isEmpty() ? "passed over" : row.reason());
    }

    private static String air(Reading reading) {
        String celsius = String.format(Locale.ROOT, "%.1f °C", reading.temperatureCelsius());
        return Double.isNaN(reading.humidityPercent())
                ? celsius
                : celsius + String.format(Locale.ROOT, ", %.0f %%", reading.humidityPercent());
    }

    private static String counted(long count) {
        return String.format(Locale.ROOT, "%,d", count).replace(',', ' ');
    }
}
