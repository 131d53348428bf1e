package org.moultwright.device.link;

import java.time.Duration;

/** How long to wait before the next try: longer each time it fails, up to a limit. */
final class BackOff {
    private final LinkTiming timing;
    private Duration next;

    BackOff(LinkTiming timing) {
        this.timing = timing;
        this.next = timing.firstWait();
    }

    Duration next() {
        Duration wait = next;
        Duration doubled = wait.multipliedBy(2);
        next = doubled.compareTo(timing.longestWait()) < 0 ? doubled : timing.longestWait();
        return wait;
    }

    void startOver() {
        next = timing.firstWait();
    }
}
