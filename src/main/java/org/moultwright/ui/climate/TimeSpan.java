package org.moultwright.ui.climate;

import java.time.Duration;
import java.util.Optional;

/** How far back a trace goes. */
enum TimeSpan {
    DAY("Day", Optional.of(Duration.ofDays(1))),
    WEEK("Week", Optional.of(Duration.ofDays(7))),
    MONTH("Month", Optional.of(Duration.ofDays(30))),
    ALL("All", Optional.empty());

    private final String word;
    private final Optional<Duration> length;

    TimeSpan(String word, Optional<Duration> length) {
        this.word = word;
        this.length = length;
    }

    String word() {
        return word;
    }

    /** Empty for all there is. */
    Optional<Duration> length() {
        return length;
    }
}
