package org.moultwright.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.Stage;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;

/** What a day of a ribbon says is what was written by that day's end, and never what lies between two looks. */
class RibbonWordsTest {
    private static final Ribbon RIBBON = new Ribbon(
            Optional.empty(),
            Optional.empty(),
            List.of(
                    counted("2026-04-09T19:40:00Z", 108, 1, 9),
                    counted("2026-04-11T19:40:00Z", 69, 40, 9),
                    counted("2026-05-03T19:00:00Z", 0, 106, 12)),
            List.of(expected("2026-05-03T19:00:00Z", 106, 106), expected("2026-05-04T19:00:00Z", 105, 106)),
            List.of(),
            List.of());

    private final RibbonWords words =
            new RibbonWords(Vocabulary.ENGLISH_HOBBY, new DayWords(ZoneId.of("Europe/Lisbon")));

    @Test
    void aDayIsReadAsItEndedWhereverThePointerStandsInIt() {
        assertThat(at("2026-04-09T06:00:00Z"))
                .isEqualTo(at("2026-04-09T22:00:00Z"))
                .isEqualTo("Thursday 9 April: 109 alive, 108 eggs with legs, 1 nymph; 9 lost");
    }

    @Test
    void aDayNobodyLookedNamesTheDayItIsKnownFrom() {
        assertThat(at("2026-04-10T12:00:00Z"))
                .isEqualTo("Friday 10 April: as written on 9 April, 109 alive, 108 eggs with legs, 1 nymph; 9 lost");
    }

    @Test
    void tonightIsKnownAndTomorrowExpected() {
        assertThat(at("2026-05-03T19:00:00Z")).isEqualTo("Sunday 3 May: 106 alive, 106 nymphs; 12 lost");
        assertThat(at("2026-05-04T19:00:00Z")).startsWith("Monday 4 May: expected 105 to 106 alive");
    }

    @Test
    void beforeTheOpeningNothingIsKnown() {
        assertThat(at("2026-04-08T12:00:00Z")).isEqualTo("Wednesday 8 April: not opened yet");
    }

    private String at(String instant) {
        return words.day(RIBBON, Instant.parse(instant));
    }

    private static Ribbon.Point counted(String at, double eggsWithLegs, double nymphs, double lost) {
        return new Ribbon.Point(
                Instant.parse(at),
                Map.of(Stage.POSTEMBRYO, eggsWithLegs, Stage.INSTAR1, nymphs),
                0,
                lost,
                Double.NaN,
                Double.NaN);
    }

    private static Ribbon.Point expected(String at, double low, double high) {
        return new Ribbon.Point(Instant.parse(at), Map.of(Stage.INSTAR1, high), 0, 12, low, high);
    }
}
