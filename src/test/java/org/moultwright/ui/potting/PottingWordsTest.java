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

    /** Their first are potted; the tray is not as if none had come yet. */
    @Test
    void ofATrayWhoseFirstAreGoneTheNextAreForetold() {
        Instant now = EXPECTED.minus(Duration.ofDays(2));
        assertThat(empty(List.of(tray("A1", 2, 0), tray("B1", 0, -5)), now))
                .isEqualTo("No slings are counted in the trays now. "
                        + "Half of A1 are expected to be slings between 8 and 11 May.");
        assertThat(empty(List.of(tray("A1", 0, 0), tray("B1", 0, -1)), now))
                .isEqualTo("No slings yet. The first are expected between 7 and 10 May, in B1.");
    }

    private static String empty(List<TrayView> trays, Instant now) {
        return PottingWords.empty(trays, Stage.INSTAR2, Vocabulary.ENGLISH_HOBBY, new DayWords(ZoneOffset.UTC), now);
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
        TrayView tray = tray("A1", 0, 0);
        Taking taking = new Taking(new BroodView(record, List.of(tray), Optional.empty()), tray, () -> {});
        return PottingWords.stay(taking, Vocabulary.ENGLISH_HOBBY, new DayWords(ZoneOffset.UTC), now);
    }

    /** A tray of which so many were seen as slings, the others expected so many days after the ninth of May. */
    private static TrayView tray(String code, int there, int daysLater) {
        Instant middle = EXPECTED.plus(Duration.ofDays(daysLater));
        InstantInterval when =
                new InstantInterval(middle.minus(Duration.ofDays(1)), middle, middle.plus(Duration.ofDays(2)));
        TrayForecast forecast = new TrayForecast(
                code, 60, 34, List.of(new MoultForecast(Stage.INSTAR2, there, when, when, when)), List.of());
        return new TrayView(
                "CC-26-A",
                code,
                "box 1",
                34,
                Map.of(Stage.INSTAR1, 34),
                Optional.empty(),
                TrayView.Due.DONE,
                Optional.of(forecast));
    }
}
