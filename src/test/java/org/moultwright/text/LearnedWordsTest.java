package org.moultwright.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.forecast.BroodForecast;
import org.moultwright.compute.forecast.PriorSource;
import org.moultwright.domain.Stage;

class LearnedWordsTest {
    @Test
    void broodsAlikeShareASentence() {
        assertThat(LearnedWords.sentences(List.of(
                        learned("A", PriorSource.LEARNED, 2, "X", "Y"),
                        learned("B", PriorSource.LEARNED, 2, "X", "Y"),
                        learned("C", PriorSource.FOLDER, 0))))
                .containsExactly(
                        "A and B: timing learned from 2 completed broods of the species, X and Y.",
                        "C: timing as written down for the brood; no completed brood of the species to learn from"
                                + " yet.");
    }

    @Test
    void inShortTheMostCounts() {
        assertThat(LearnedWords.inShort(List.of(learned("A", PriorSource.GENERAL, 0))))
                .isEqualTo("no completed brood to learn from yet");
        assertThat(LearnedWords.inShort(
                        List.of(learned("A", PriorSource.GENERAL, 0), learned("B", PriorSource.LEARNED, 1))))
                .isEqualTo("learned from 1 completed brood");
    }

    private static LearnedWords.Learned learned(String brood, PriorSource source, int count, String... teachers) {
        return new LearnedWords.Learned(
                new BroodForecast(
                        brood,
                        Instant.EPOCH,
                        0,
                        0,
                        source,
                        count,
                        List.of(),
                        Stage.INSTAR2,
                        Optional.empty(),
                        List.of()),
                List.of(teachers));
    }
}
