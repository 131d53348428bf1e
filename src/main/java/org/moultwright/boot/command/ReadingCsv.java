package org.moultwright.boot.command;

import org.moultwright.domain.Reading;

/** A reading as one line of CSV; what was not measured stays empty. */
final class ReadingCsv {
    static final String HEADER = "time,temperature_celsius,humidity_percent,quality";

    private ReadingCsv() {}

    static String line(Reading reading) {
        return "%s,%s,%s,%s"
                .formatted(
                        reading.takenAt(),
                        number(reading.temperatureCelsius()),
                        number(reading.humidityPercent()),
                        reading.quality().key());
    }

    private static String number(double value) {
        return Double.isNaN(value) ? "" : Double.toString(value);
    }
}
