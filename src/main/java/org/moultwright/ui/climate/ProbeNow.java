package org.moultwright.ui.climate;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.text.DayWords;

/**
 * The chosen probe's last reading, large.
 *
 * @param celsius such as "27.0 °C", a dash if there is none
 * @param age such as "40 s ago, ± 0.2"
 * @param isStale whether it is too old to be taken for now
 */
record ProbeNow(String celsius, String age, boolean isStale) {
    static final ProbeNow NOTHING = new ProbeNow("–", "nothing heard yet", true);

    /** Two standard uncertainties: about 95 %. */
    private static final double COVERAGE = 2;

    static ProbeNow of(Reading reading, double correctedCelsius, Optional<Double> sdCelsius, Duration age) {
        if (reading.quality() == Quality.FAULT) {
            return new ProbeNow("–", "the last line was no measurement", true);
        }
        String uncertainty = sdCelsius
                .filter(sd -> sd > 0)
                .map(sd -> String.format(Locale.ROOT, ", ± %.1f", COVERAGE * sd))
                .orElse("");
        return new ProbeNow(
                String.format(Locale.ROOT, "%.1f °C", correctedCelsius),
                DayWords.age(age) + " ago" + uncertainty,
                ProbeRow.isSilent(age));
    }
}
