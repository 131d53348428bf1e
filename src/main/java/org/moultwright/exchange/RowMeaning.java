package org.moultwright.exchange;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.workflow.ColumnMeaning;
import org.moultwright.workflow.ReadingFiles;
import org.moultwright.workflow.ReadingMapping;

/** Understands rows of a file by a mapping, one after another. Not safe to share. */
final class RowMeaning {
    private static final Set<String> NOTHING = Set.of("", "-", "--", "---", "na", "n/a", "nan", "null");
    private static final int SHOWN = 40;
    private static final double LATEST_SECOND = 32_503_680_000.0;

    private final ReadingMapping mapping;
    private final LocalClock clock;
    private final int temperature;
    private final int humidity;

    RowMeaning(ReadingMapping mapping) {
        this.mapping = mapping;
        this.clock = new LocalClock(mapping.zone());
        this.temperature = Math.max(column(ColumnMeaning.CELSIUS), column(ColumnMeaning.FAHRENHEIT));
        this.humidity = column(ColumnMeaning.HUMIDITY);
    }

    ReadingFiles.Row of(long line, List<String> cells) {
        try {
            return new ReadingFiles.Row(line, cells, Optional.of(reading(cells)), "");
        } catch (Unusable reason) {
            return new ReadingFiles.Row(line, cells, Optional.empty(), reason.sentence);
        }
    }

    private Reading reading(List<String> cells) throws Unusable {
        Instant takenAt = instant(cells);
        String written = cell(cells, temperature, Texts.say("temperature"));
        double number = number(written, "temperature");
        boolean isFahrenheit = mapping.columns().get(temperature) == ColumnMeaning.FAHRENHEIT;
        double celsius = isFahrenheit ? MeasuredText.celsiusOf(number) : number;
        if (celsius < Reading.LOWEST_CELSIUS || celsius > Reading.HIGHEST_CELSIUS) {
            throw new Unusable(Texts.say(
                    "{0} °C is no temperature of air: it lies outside {1} to {2}",
                    Numbers.fixed(celsius, 1),
                    Numbers.fixed(Reading.LOWEST_CELSIUS, 0),
                    Numbers.fixed(Reading.HIGHEST_CELSIUS, 0)));
        }
        return new Reading(takenAt, celsius, humidityPercent(cells), Quality.GOOD);
    }

    private double humidityPercent(List<String> cells) throws Unusable {
        boolean isThere = humidity >= 0 && humidity < cells.size() && !isNothing(cells.get(humidity));
        double percent = isThere ? number(cells.get(humidity), "humidity") : Double.NaN;
        if (percent < 0 || percent > 100) {
            throw new Unusable(Texts.say("a humidity of {0} % lies outside 0 to 100", percent));
        }
        return percent;
    }

    private Instant instant(List<String> cells) throws Unusable {
        Instant instant = isEpoch() ? sinceEpoch(cells) : local(cells);
        clock.follows(instant);
        return instant;
    }

    private boolean isEpoch() {
        return column(ColumnMeaning.EPOCH_SECONDS) >= 0 || column(ColumnMeaning.EPOCH_MILLIS) >= 0;
    }

    private Instant sinceEpoch(List<String> cells) throws Unusable {
        int seconds = column(ColumnMeaning.EPOCH_SECONDS);
        String cell = cell(cells, Math.max(seconds, column(ColumnMeaning.EPOCH_MILLIS)), Texts.say("time"));
        double since = number(cell, "time") * (seconds >= 0 ? 1 : 1e-3);
        if (since < 0 || since > LATEST_SECOND) {
            throw new Unusable(Texts.say("“{0}” is no time since 1970", shown(cell)));
        }
        return Instant.ofEpochMilli(Math.round(since * 1e3));
    }

    private Instant local(List<String> cells) throws Unusable {
        int both = column(ColumnMeaning.DATE_AND_TIME);
        String words;
        Optional<WrittenTime> written;
        if (both >= 0) {
            words = cell(cells, both, Texts.say("time"));
            written = WrittenTime.of(words, mapping.dates());
        } else {
            String date = cell(cells, column(ColumnMeaning.DATE), Texts.say("date"));
            String time = cell(cells, column(ColumnMeaning.TIME), Texts.say("time of day"));
            words = date + " " + time;
            written = WrittenTime.of(date, time, mapping.dates());
        }
        if (written.isEmpty()) {
            throw new Unusable(Texts.say(
                    "“{0}” is no time with its date as {1}",
                    shown(words), mapping.dates().words()));
        }
        WrittenTime time = written.get();
        Optional<Instant> instant =
                time.offset().map(offset -> time.local().toInstant(offset)).or(() -> clock.instant(time.local()));
        return instant.orElseThrow(() ->
                new Unusable(Texts.say("“{0}” never was: clocks in {1} leapt over it", shown(words), mapping.zone())));
    }

    private int column(ColumnMeaning meaning) {
        return mapping.columns().indexOf(meaning);
    }

    private static String cell(List<String> cells, int column, String what) throws Unusable {
        if (column < 0 || column >= cells.size() || isNothing(cells.get(column))) {
            throw new Unusable(Texts.say("no {0} in this row", what));
        }
        return cells.get(column);
    }

    private static double number(String cell, String what) throws Unusable {
        OptionalDouble number = MeasuredText.number(cell);
        if (number.isEmpty()) {
            throw new Unusable(Texts.say("“{0}” is no {1}", shown(cell), what));
        }
        return number.getAsDouble();
    }

    private static boolean isNothing(String cell) {
        // No word for nothing begins with a digit, as nearly all cells do.
        boolean isNumber = !cell.isEmpty() && cell.charAt(0) >= '0' && cell.charAt(0) <= '9';
        return !isNumber && NOTHING.contains(cell.strip().toLowerCase(Locale.ROOT));
    }

    private static String shown(String cell) {
        String words = cell.strip();
        return words.length() <= SHOWN ? words : words.substring(0, SHOWN) + "…";
    }

    /** The row means no reading. */
    private static final class Unusable extends Exception {
        private static final long serialVersionUID = 1L;

        private final String sentence;

        Unusable(String sentence) {
            // No trace: a file of a million such rows is told of row by row.
            super(sentence, null, false, false);
            this.sentence = sentence;
        }
    }
}
