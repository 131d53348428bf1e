package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;

/** How often a probe reports: the middle one of its last intervals, so that a gap or a set clock counts little. */
final class ReportingHabit {
    /** Held until enough was heard (ours, no source). */
    static final Duration USUAL = Duration.ofSeconds(60);

    private static final int LEAST = 4;
    private static final int MOST = 21;
    private static final Duration SHORTEST = Duration.ofSeconds(1);

    private final Deque<Duration> intervals = new ArrayDeque<>();
    private Instant last = Instant.MAX;

    void heard(Instant takenAt) {
        if (takenAt.isAfter(last)) {
            intervals.add(Duration.between(last, takenAt));
        }
        if (intervals.size() > MOST) {
            intervals.remove();
        }
        last = takenAt;
    }

    Duration period() {
        if (intervals.size() < LEAST) {
            return USUAL;
        }
        List<Duration> sorted = new ArrayList<>(intervals);
        Collections.sort(sorted);
        Duration middle = sorted.get(sorted.size() / 2);
        return middle.compareTo(SHORTEST) < 0 ? SHORTEST : middle;
    }
}
