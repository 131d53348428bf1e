package org.moultwright.ui.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.moultwright.compute.agreement.DisplayCheck;
import org.moultwright.domain.DisplayNote;

class DisplayCreepTest {
    private static final Instant START = Instant.parse("2026-04-01T19:00:00Z");
    private static final double PROBE_CELSIUS = 27;

    @Test
    void aDisplayThatMovesAwayIsToldWithTheDayItShows() {
        List<DisplayPair> pairs = pairs(20, day -> (day % 2 == 0 ? 0.2 : 0.3) + (day < 14 ? 0 : 0.6));
        Optional<DisplayCreep> creep = DisplayCreep.in(pairs);
        assertThat(creep).isPresent();
        assertThat(creep.orElseThrow().firstCelsius()).isCloseTo(0.25, within(1e-9));
        assertThat(creep.orElseThrow().latelyCelsius()).isBetween(0.7, 0.9);
        assertThat(creep.orElseThrow().since().note().at())
                .isBetween(START.plus(Duration.ofDays(14)), START.plus(Duration.ofDays(16)));
        assertThat(DisplayWords.creep(creep.orElseThrow(), "15 Apr"))
                .startsWith("Since 15 Apr it has crept: at first it read +0.25 °C on average, lately +0.");
    }

    @Test
    void aDisplayThatKeepsItsDifferenceIsNot() {
        assertThat(DisplayCreep.in(pairs(20, day -> day % 2 == 0 ? 0.2 : 0.3))).isEmpty();
    }

    @Test
    void tenPairsOrFewerTellNothingYet() {
        assertThat(DisplayCreep.in(pairs(10, day -> day))).isEmpty();
        assertThat(DisplayCreep.in(List.of())).isEmpty();
    }

    /** One a day, the latest first. */
    private static List<DisplayPair> pairs(int count, IntToDoubleFunction difference) {
        return IntStream.range(0, count)
                .map(i -> count - 1 - i)
                .mapToObj(day -> pair(START.plus(Duration.ofDays(day)), difference.applyAsDouble(day)))
                .toList();
    }

    private static DisplayPair pair(Instant at, double difference) {
        double shown = PROBE_CELSIUS + difference;
        return new DisplayPair(
                new DisplayNote(UUID.randomUUID(), at, "INC-1", shown, 0.1, ""),
                new DisplayCheck(shown, PROBE_CELSIUS, new DisplayCheck.Uncertainty(0.1, 0.03, 0.1)));
    }
}
