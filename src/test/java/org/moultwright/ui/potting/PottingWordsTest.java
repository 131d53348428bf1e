package org.moultwright.ui.potting;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.forecast.TrayForecast;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Stage;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.TrayView;

class PottingWordsTest {
    private static final Instant EXPECTED = Instant.parse("2026-05-09T20:41:00Z");

    @Test
    void ofATrayWithoutSlingsTheFirstAreToldWhileTheyAreToCome() {
        assertThat(stay(EXPECTED.minus(Duration.ofDays(2)))).isEqualTo("first about 9 May");
    }

    @Test
    void aDayThatIsPastIsNotForetold() {
        assertThat(stay(EXPECTED.plus(Duration.ofDays(1)))).isEqualTo("first may be there: look");
    }

    @Test
    void potsTooManyAreTakenOff() {
        assertThat(PottingWords.balance(3, 4, 0)).isEqualTo("3 taken = 4 potted + 0 dead or lost − 1 unexplained");
        assertThat(PottingWords.balance(3, 2, 0)).isEqualTo("3 taken = 2 potted + 0 dead or lost + 1 unexplained");
    }

    private static String stay(Instant now) {
        BroodRecord record = BroodRecord.of(new Brood(
                "CC-26-A",
                "Chromatopelma cyaneopubescens",
                ZoneOffset.UTC,
                Optional.empty(),
                Optional.empty(),
                List.of(Stage.values()),
                27,
                Optional.empty()));
        TrayView tray = new TrayView(
                "CC-26-A",
                "A1",
                "box 1",
                34,
                Map.of(Stage.INSTAR1, 34),
                Optional.empty(),
                TrayView.Due.DONE,
                Optional.of(forecast()));
        Taking taking = new Taking(new BroodView(record, List.of(tray), Optional.empty()), tray, () -> {});
        return PottingWords.stay(taking, Vocabulary.ENGLISH_HOBBY, new DayWords(ZoneOffset.UTC), now);
    }

    private static TrayForecast forecast() {
        InstantInterval first =
                new InstantInterval(EXPECTED.minus(Duration.ofDays(1)), EXPECTED, EXPECTED.plus(Duration.ofDays(2)));
        return new TrayForecast(
                "A1", 60, 34, List.of(new MoultForecast(Stage.INSTAR2, 0, first, first, first)), List.of());
    }
}
