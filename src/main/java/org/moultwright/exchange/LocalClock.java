package org.moultwright.exchange;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneRules;
import java.util.List;
import java.util.Optional;

/**
 * Turns what a clock in a zone showed into instants, row after row. The hour that comes twice when clocks go back is
 * told by the row before: the instant nearest to it that is not the same. Not safe to share.
 */
final class LocalClock {
    private final ZoneRules rules;
    private Optional<Instant> before = Optional.empty();

    LocalClock(ZoneId zone) {
        this.rules = zone.getRules();
    }

    /** The instant, empty for one of the times clocks leap over. */
    Optional<Instant> instant(LocalDateTime shown) {
        List<ZoneOffset> offsets = rules.getValidOffsets(shown);
        Optional<Instant> chosen = offsets.size() < 2
                ? offsets.stream().map(shown::toInstant).findFirst()
                : nearest(shown.toInstant(offsets.get(0)), shown.toInstant(offsets.get(1)));
        chosen.ifPresent(this::follows);
        return chosen;
    }

    /** Says what instant a row had that told it itself. */
    void follows(Instant instant) {
        before = Optional.of(instant);
    }

    private Optional<Instant> nearest(Instant early, Instant late) {
        return before.map(last -> {
                    boolean isLate = early.equals(last)
                            || (!late.equals(last) && away(late, last).compareTo(away(early, last)) < 0);
                    return isLate ? late : early;
                })
                .or(() -> Optional.of(early));
    }

    private static Duration away(Instant one, Instant other) {
        return Duration.between(one, other).abs();
    }
}
