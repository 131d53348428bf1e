package org.moultwright.domain;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;

class InstantRangeTest {
    private static final Instant FIRST = Instant.parse("2026-10-01T00:00:00Z");

    /** Laid from the first to the fifth of October, the fifth included. */
    @Test
    void aRangeUpToMidnightEndsOnTheDayBefore() {
        assertThat(new InstantRange(FIRST, Instant.parse("2026-10-06T00:00:00Z")).last())
                .isBetween(Instant.parse("2026-10-05T23:59:59Z"), Instant.parse("2026-10-05T23:59:59.999999999Z"));
        assertThat(new InstantRange(FIRST, FIRST).last()).isEqualTo(FIRST);
    }
}
