package org.moultwright.ui.climate;

import java.time.Duration;
import java.util.Optional;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;

/**
 * The chosen probe's last reading, large.
 *
 * @param celsius such as "27.0 °C", a dash if there is none
 * @param age such as "40 s ago, ± 0.2"
 * @param isStale whether it is too old to be taken for now
 */
record ProbeNow(String celsius, String age, boolean isStale) {
    static final ProbeNow NOTHING = new ProbeNow("–", Texts.say("nothing heard yet"), true);

    /** Two standard uncertainties: about 95 %. */
    private static final double COVERAGE = 2;

    static ProbeNow of(Reading reading, double correctedCelsius, Optional<Double> sdCelsius, Duration age) {
        if (reading.quality() == Quality.FAULT) {
            return new ProbeNow("–", Texts.say("the last line was no measurement"), true);
        }
        String ago = Texts.say("{0} ago", DayWords.age(age));
        return new ProbeNow(
                Degrees.words(correctedCelsius, 1),
                sdCelsius
                        .filter(sd -> sd > 0)
                        .map(sd -> ago + ", ± " + Degrees.apart(COVERAGE * sd, 1))
                        .orElse(ago),
                ProbeRow.isSilent(age));
    }
}
