package org.moultwright.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.moultwright.domain.Stage.INSTAR1;
import static org.moultwright.domain.Stage.POSTEMBRYO;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.forecast.SacForecast;
import org.moultwright.domain.Brood;
import org.moultwright.domain.Stage;

/** A sac to be pulled from the tenth to the twentieth of May. */
class SacWordsTest {
    private final SacWords words = new SacWords(Vocabulary.ENGLISH_HOBBY, new DayWords(ZoneOffset.UTC));
    private final SacForecast sac = new SacForecast(20, 20, List.of(moult(POSTEMBRYO, 10), moult(INSTAR1, 20)));

    @Test
    void theDaysToPullItAreToldUntilTheyAreOver() {
        assertThat(words.pull(sac, brood(Optional.empty()), day(15))).contains("pull 10 to 20 May");
        assertThat(words.pull(sac, brood(Optional.empty()), day(21))).contains("pull now, it was due 10 to 20 May");
        assertThat(words.toPull(sac, brood(Optional.empty()), day(21)))
                .contains("To pull: now, it was due 10 to 20 May.");
    }

    @Test
    void whatWasTakenFromItsMotherIsNotToBePulledAgain() {
        assertThat(words.pull(sac, brood(Optional.of(day(12))), day(15))).isEmpty();
    }

    private static Brood brood(Optional<Instant> pulled) {
        return new Brood(
                "GP-26-A",
                "Inventa prima",
                ZoneOffset.UTC,
                Optional.empty(),
                pulled,
                List.of(Stage.values()),
                27,
                Optional.empty());
    }

    private static MoultForecast moult(Stage into, int day) {
        InstantInterval when = new InstantInterval(day(day - 1), day(day), day(day + 1));
        return new MoultForecast(into, 0, when, when, when);
    }

    private static Instant day(int ofMay) {
        return LocalDate.of(2026, 5, ofMay).atStartOfDay().toInstant(ZoneOffset.UTC);
    }
}
