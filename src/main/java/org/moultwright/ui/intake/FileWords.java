package org.moultwright.ui.intake;

import org.moultwright.domain.Reading;
import org.moultwright.language.Degrees;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.workflow.ReadingFiles.Row;
import org.moultwright.workflow.TakeInReadings;

/** What is said of a file of readings. */
final class FileWords {
    private FileWords() {}

    /** "P-9 in box 1: 1 000 readings, 900 of them new. 2 rows are none." */
    static String takenIn(String probe, String container, TakeInReadings.Result result) {
        String readings = result.added() == 0
                ? Texts.say("all {0} readings were here already", counted(result.readings()))
                : result.added() == result.readings()
                        ? Texts.say("{0} readings taken in", counted(result.readings()))
                        : Texts.say(
                                "{0} readings, {1} of them new", counted(result.readings()), counted(result.added()));
        String words = Texts.say("{0} in {1}: {2}.", probe, container, readings);
        return result.unused() == 0
                ? words
                : words + " "
                        + Texts.count(
                                result.unused(), "{0} row is none.", "{0} rows are none.", counted(result.unused()));
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
                .orElse(row.reason().isEmpty() ? Texts.say("passed over") : row.reason());
    }

    private static String air(Reading reading) {
        String celsius = Degrees.words(reading.temperatureCelsius(), 1);
        return Double.isNaN(reading.humidityPercent())
                ? celsius
                : celsius + ", " + Numbers.fixed(reading.humidityPercent(), 0) + " %";
    }

    private static String counted(long count) {
        return Numbers.grouped(count).replace(',', ' ');
    }
}
