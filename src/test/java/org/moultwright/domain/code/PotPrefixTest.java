package org.moultwright.domain.code;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.moultwright.domain.Brood;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Pot;
import org.moultwright.domain.Stage;

class PotPrefixTest {
    private static final Instant MAY_2026 = Instant.parse("2026-05-05T20:00:00Z");

    @ParameterizedTest
    @CsvSource({"CC-26-A, 26A", "cc-26-b, 26B", "CC-26-L, 26CC", "A, 26A", "2026/7, 26X", "TARANTULA, 26X"})
    void comesFromTheBroodsCode(String broodCode, String prefix) {
        assertThat(PotPrefix.of(brood(broodCode, Optional.empty()), MAY_2026).text())
                .isEqualTo(prefix);
    }

    @Test
    void takesTheYearOfLayingInTheKeepersZone() {
        Instant newYear = Instant.parse("2025-12-31T23:30:00Z");
        Brood brood = brood("CC-26-A", Optional.of(new InstantRange(newYear.minusSeconds(3600), newYear)));
        assertThat(PotPrefix.of(brood, MAY_2026).text()).isEqualTo("26A");
    }

    @Test
    void countsOnFromTheHighestOfItsOwn() {
        PotPrefix prefix = new PotPrefix("26A");
        List<Pot> pots = List.of(
                pot(new PotCode(prefix, 7).text()),
                pot(new PotCode(prefix, 3).text()),
                pot(new PotCode(new PotPrefix("26B"), 40).text()),
                pot("an older numbering 12"));
        assertThat(prefix.next(2, pots)).containsExactly(new PotCode(prefix, 8), new PotCode(prefix, 9));
        assertThat(prefix.next(1, List.of())).containsExactly(new PotCode(prefix, 1));
    }

    @Test
    void refusesWhatNoCodeCanBeginWith() {
        assertThat(PotPrefix.read(" 26a ")).contains(new PotPrefix("26A"));
        assertThat(PotPrefix.read("26L")).isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PotPrefix("A26"))
                .withMessageContaining("'A26'");
    }

    private static Pot pot(String code) {
        return new Pot(code, "A1", MAY_2026, "");
    }

    private static Brood brood(String code, Optional<InstantRange> laid) {
        return new Brood(
                code,
                "Chromatopelma cyaneopubescens",
                ZoneId.of("Europe/Berlin"),
                laid,
                Optional.empty(),
                List.of(Stage.values()),
                Brood.DEFAULT_REFERENCE_CELSIUS,
                Optional.empty());
    }
}
