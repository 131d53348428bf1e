package org.moultwright.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.HandReading;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.RoomFixture;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.RoomView;

class TopLineReaderTest {
    private static final Instant NOW = Instant.parse("2026-05-03T19:00:00Z");
    private static final String HAND = HandReading.probeIn("box 1");

    /** A thermometer read a minute ago must not hide that the probe beside it has been silent since the morning. */
    @Test
    void whatWasReadByHandHidesNoSilentProbe() {
        BroodRecord record = InventedBrood.measured(
                "XX-26-A",
                NOW.minusSeconds(86_400),
                List.of(
                        InventedBrood.probe("P-1", "box 1", NOW.minusSeconds(86_400)),
                        InventedBrood.probe(HAND, "box 1", NOW.minusSeconds(86_400))));
        RoomView room = new RoomView(
                NOW,
                List.of(new BroodView(record, List.of(), Optional.empty())),
                Map.of("P-1", reading(36_000, 25), HAND, reading(60, 27)),
                Optional.empty());
        assertThat(TopLineReader.read(room, new DayWords(ZoneOffset.UTC), Vocabulary.ENGLISH_HOBBY)
                        .probes())
                .containsExactly(new TopLine.ProbeNow("box 1", 25, NOW.minusSeconds(36_000)));
    }

    @Test
    void whatIsAsGoodAsNeverIsNotNext() {
        DayWords days = new DayWords(ZoneOffset.UTC);
        RoomView cold = RoomFixture.room(List.of(RoomFixture.cold()));
        assertThat(TopLineReader.read(cold, days, Vocabulary.ENGLISH_HOBBY).next())
                .isEmpty();
        RoomView usual = RoomFixture.room(List.of(RoomFixture.cold(), RoomFixture.broodC()));
        assertThat(TopLineReader.read(usual, days, Vocabulary.ENGLISH_HOBBY).next())
                .hasValueSatisfying(next -> assertThat(next.toString()).contains("C1"));
    }

    private static Reading reading(long secondsAgo, double celsius) {
        return new Reading(NOW.minusSeconds(secondsAgo), celsius, Double.NaN, Quality.GOOD);
    }
}
