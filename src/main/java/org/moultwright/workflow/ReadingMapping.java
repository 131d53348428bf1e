package org.moultwright.workflow;

import java.nio.charset.Charset;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.moultwright.language.Texts;

/**
 * How a file of readings is understood.
 *
 * @param charset of its text
 * @param delimiter between its cells
 * @param rowsBefore how many rows stand before the first reading, a header among them
 * @param columns what each column means
 * @param dates the order of a date's parts
 * @param zone of its times, where they do not tell an offset themselves
 */
public record ReadingMapping(
        Charset charset, char delimiter, int rowsBefore, List<ColumnMeaning> columns, DateOrder dates, ZoneId zone) {
    public ReadingMapping {
        columns = List.copyOf(columns);
    }

    /** What still keeps it from being of use, in a sentence; empty if nothing does. */
    public Optional<String> missing() {
        int wholeTimes =
                (int) columns.stream().filter(ColumnMeaning::isWholeTime).count();
        int dateColumns = Collections.frequency(columns, ColumnMeaning.DATE);
        int timeColumns = Collections.frequency(columns, ColumnMeaning.TIME);
        boolean isOneTime = wholeTimes == 1 && dateColumns == 0 && timeColumns == 0;
        boolean isOfTwo = wholeTimes == 0 && dateColumns == 1 && timeColumns == 1;
        if (!isOneTime && !isOfTwo) {
            return Optional.of(
                    Texts.say("Say which one column holds the time, or which two hold the date and the time of day."));
        }
        if (columns.stream().filter(ColumnMeaning::isTemperature).count() != 1) {
            return Optional.of(Texts.say("Say which one column holds the temperature."));
        }
        return Collections.frequency(columns, ColumnMeaning.HUMIDITY) > 1
                ? Optional.of(Texts.say("Only one column can hold the humidity."))
                : Optional.empty();
    }

    public ReadingMapping with(int column, ColumnMeaning meaning) {
        List<ColumnMeaning> changed = new ArrayList<>(columns);
        changed.set(column, meaning);
        return new ReadingMapping(charset, delimiter, rowsBefore, changed, dates, zone);
    }

    public ReadingMapping withDates(DateOrder order) {
        return new ReadingMapping(charset, delimiter, rowsBefore, columns, order, zone);
    }

    public ReadingMapping withZone(ZoneId other) {
        return new ReadingMapping(charset, delimiter, rowsBefore, columns, dates, other);
    }

    public ReadingMapping withRowsBefore(int rows) {
        return new ReadingMapping(charset, delimiter, rows, columns, dates, zone);
    }
}
