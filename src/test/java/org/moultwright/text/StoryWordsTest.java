package org.moultwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.compute.history.StoryEvent;
import org.moultwright.domain.Cause;

class StoryWordsTest {
    private final StoryWords words = new StoryWords(Vocabulary.ENGLISH_HOBBY, new DayWords(ZoneOffset.UTC));

    @Test
    void whatLeftItsPotIsTold() {
        Instant march = Instant.parse("2026-03-01T00:00:00Z");
        assertThat(words.line(new StoryEvent.LeftPots(march, 1, Cause.DIED_IN_POT)))
                .isEqualTo("1 died in its pot");
        assertThat(words.line(new StoryEvent.LeftPots(march, 3, Cause.DIED_IN_POT)))
                .isEqualTo("3 died in their pots");
        assertThat(words.line(new StoryEvent.LeftPots(march, 2, Cause.HANDED_OVER)))
                .isEqualTo("2 potted: handed over");
    }

    @ParameterizedTest
    @CsvSource({
        "0.314, 'Probe P1 calibrated: reads 0.31 °C too high, give or take 0.24; corrected from 1 March on'",
        "-0.2, 'Probe P1 calibrated: reads 0.20 °C too low, give or take 0.24; corrected from 1 March on'"
    })
    void aCalibrationSaysWhatItFoundAndFromWhenItHolds(double tooHigh, String line) {
        Instant march = Instant.parse("2026-03-01T00:00:00Z");

        assertThat(words.line(new StoryEvent.Calibrated(march.plusSeconds(864_000), "P1", march, tooHigh, 0.12)))
                .isEqualTo(line);
    }
}
