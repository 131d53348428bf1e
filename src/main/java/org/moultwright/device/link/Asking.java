package org.moultwright.device.link;

import java.util.Optional;
import org.moultwright.device.profile.Poll;

/** Knows when an instrument that speaks only when asked is to be asked. */
final class Asking {
    private final Optional<Poll> poll;
    private final LinkClock clock;
    private long nextNanos;

    Asking(Optional<Poll> poll, LinkClock clock) {
        this.poll = poll;
        this.clock = clock;
    }

    /** The wire was just opened: it is asked at once. */
    void startOver() {
        nextNanos = clock.nanos();
    }

    boolean isDue() {
        return poll.isPresent() && clock.nanos() - nextNanos >= 0;
    }

    /** Asks, and gives what was asked. */
    byte[] ask(ByteSource source) {
        Poll asked = poll.orElseThrow();
        nextNanos = clock.nanos() + asked.every().toNanos();
        source.write(asked.request());
        return asked.request();
    }
}
