package org.moultwright.device.link;

import java.time.Duration;

/**
 * How patient a link is.
 *
 * @param silentAfter the least time without a line that counts as silence
 * @param firstWait before a port is tried again
 * @param longestWait the wait doubles up to this
 */
public record LinkTiming(Duration silentAfter, Duration firstWait, Duration longestWait) {
    /** The same, patient enough for an instrument that is asked so rarely. */
    LinkTiming forAsking(Duration every) {
        Duration answers = every.multipliedBy(3);
        return answers.compareTo(silentAfter) > 0 ? new LinkTiming(answers, firstWait, longestWait) : this;
    }

    /** For daily use. */
    public static final LinkTiming USUAL =
            new LinkTiming(Duration.ofSeconds(60), Duration.ofMillis(500), Duration.ofSeconds(5));
}
