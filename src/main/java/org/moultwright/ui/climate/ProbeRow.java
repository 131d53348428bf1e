package org.moultwright.ui.climate;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.moultwright.domain.HandReading;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.ui.control.Tone;
import org.moultwright.ui.shell.ShellViewModel;

/**
 * A probe as one row.
 *
 * @param probe its code
 * @param place where it measures, or that nobody wrote it down
 * @param tone fresh, silent, or never heard
 * @param reading its last good reading, corrected, such as "27.0 °C"; empty if there is none
 * @param age such as "40 s ago"
 * @param wire how its wire is doing, if it is on one of this machine
 */
record ProbeRow(String probe, String place, Tone tone, String reading, String age, String wire) {

    static ProbeRow of(String probe, ProbePlaces places, Optional<Reading> last, String wire, Instant now) {
        String place = places.stay(probe, now).map(stay -> stay.container()).orElse(Texts.say("no place written down"));
        Optional<Reading> good = last.filter(reading -> reading.quality() == Quality.GOOD);
        return good.map(reading -> {
                    Duration age = Duration.between(reading.takenAt(), now);
                    boolean isSilent = isSilent(age) && !HandReading.isByHand(probe);
                    return new ProbeRow(
                            probe,
                            place,
                            isSilent ? Tone.WARN : Tone.OK,
                            Degrees.words(places.correctedCelsius(probe, reading), 1),
                            isSilent
                                    ? Texts.say("silent for {0}", DayWords.age(age))
                                    : Texts.say("{0} ago", DayWords.age(age)),
                            wire);
                })
                .orElse(new ProbeRow(probe, place, Tone.MUTED, "", Texts.say("nothing heard yet"), wire));
    }

    static boolean isSilent(Duration age) {
        return age.compareTo(ShellViewModel.SILENT_AFTER) > 0;
    }

    String spoken() {
        return "%s, %s, %s, %s".formatted(probe, place, reading, age);
    }
}
