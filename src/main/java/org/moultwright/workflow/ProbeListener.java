package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;

/** Is told what comes over a probe's wire, and how the wire itself is doing. */
public interface ProbeListener {

    /** A line came, good or not. Later lines have a later instant unless the clock was set back. */
    void heard(ReadingLog.Logged logged);

    /** The link is now in another state. The same state is not told twice in a row. */
    void changed(LinkState state);

    /**
     * The wall clock left the steady one: it was set, or the machine slept. What came before and after is not
     * one stretch of time.
     *
     * @param seenAt the wall clock after the step
     * @param by how far it jumped, backwards if negative
     */
    void clockStepped(Instant seenAt, Duration by);

    /**
     * It is now known which probe is heard. Told once, before its first reading; to be kept, so that the same
     * probe is listened to next time.
     */
    default void identified(ProbeIdentity identity) {}

    /** Another probe speaks on the same wire; it is listened to by a link of its own. Told once for each. */
    default void alsoHeard(ProbeIdentity identity) {}
}
