package org.moultwright.exchange;

import java.util.List;
import java.util.Optional;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.language.Texts;

/** The table of readings, the one that can have millions of rows. */
final class ReadingRows {
    static final String FILE = "readings.csv";

    private static final String PROBE = "probe";

    static final Table<ProbeReading> READINGS = new Table<>(
            FILE,
            List.of(PROBE, "time", "temperature_celsius", "humidity_percent", "quality"),
            List.of(PROBE, "time", "temperature_celsius"),
            row -> row.reading().takenAt(),
            ReadingRows::read,
            row -> List.of(
                    Cell.text(row.probe()),
                    Cell.instant(row.reading().takenAt()),
                    Cell.number(row.reading().temperatureCelsius()),
                    Cell.number(row.reading().humidityPercent()),
                    row.reading().quality().key()));

    private ReadingRows() {}

    private static ProbeReading read(Row row) throws Row.Unusable {
        Quality quality = row.oneOf("quality", Texts.say("good, suspect or fault"), ReadingRows::quality);
        boolean good = quality == Quality.GOOD;
        double temperature = good
                ? row.number("temperature_celsius", Reading.LOWEST_CELSIUS, Reading.HIGHEST_CELSIUS)
                : row.numberOr("temperature_celsius", -1e6, 1e6, Double.NaN);
        double humidity = row.numberOr("humidity_percent", good ? 0 : -1e6, good ? 100 : 1e6, Double.NaN);
        return new ProbeReading(row.required(PROBE), new Reading(row.instant("time"), temperature, humidity, quality));
    }

    private static Optional<Quality> quality(String key) {
        return key.isEmpty() ? Optional.of(Quality.GOOD) : Quality.fromKey(key);
    }

    /** A reading with its probe's code. */
    record ProbeReading(String probe, Reading reading) {}
}
