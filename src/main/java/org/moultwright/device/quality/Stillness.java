package org.moultwright.device.quality;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.moultwright.device.profile.Decoded;

/** Knows whether a probe has told the very same value for too long. Not safe for several threads. */
final class Stillness {
    private final Optional<Duration> longest;
    private Optional<Decoded.Measured> still = Optional.empty();
    private Instant since = Instant.MAX;

    Stillness(Optional<Duration> longest) {
        this.longest = longest;
    }

    boolean isTooLong(Decoded.Measured measured, Instant takenAt) {
        if (!still.equals(Optional.of(measured)) || takenAt.isBefore(since)) {
            still = Optional.of(measured);
            since = takenAt;
        }
        return longest.filter(most -> Duration.between(since, takenAt).compareTo(most) > 0)
                .isPresent();
    }
}
