package org.moultwright.ui.climate;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.moultwright.language.Texts;

/** How far back a trace goes. */
enum TimeSpan {
    HOUR(Texts.say("Hour"), Optional.of(Duration.ofHours(1))),
    DAY(Texts.say("Day"), Optional.of(Duration.ofDays(1))),
    WEEK(Texts.say("Week"), Optional.of(Duration.ofDays(7))),
    MONTH(Texts.say("Month"), Optional.of(Duration.ofDays(30))),
    YEAR(Texts.say("Year"), Optional.of(Duration.ofDays(365))),
    ALL(Texts.say("All"), Optional.empty()),
    /** A stretch the keeper zoomed or moved to. */
    OWN("", Optional.empty());

    /** Those to choose from. */
    static final List<TimeSpan> OFFERED = List.of(HOUR, DAY, WEEK, MONTH, YEAR, ALL);

    private final String word;
    private final Optional<Duration> length;

    TimeSpan(String word, Optional<Duration> length) {
        this.word = word;
        this.length = length;
    }

    String word() {
        return word;
    }

    /** Empty for all there is, and for a stretch of the keeper's own. */
    Optional<Duration> length() {
        return length;
    }
}
