package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import org.moultwright.workflow.ReadingLog.Logged;

/** Where readings are kept as they come. */
public interface ReadingSink {
    /**
     * Keeps readings of one probe; they are on disk when this returns.
     *
     * <p>No reading takes another's place. One whose instant another already holds, as when the clock was set
     * back, is kept at the next free millisecond; the very same one given again is kept once.
     *
     * @return the readings as they are kept, in the order given
     */
    List<Logged> append(String probe, List<Logged> readings);

    /**
     * A sensor speaks as a probe from an instant on; on disk when this returns, unless it is known already or nothing of
     * the kind is kept here.
     */
    default void identified(String probe, ProbeIdentity sensor, Instant from) {}
}
