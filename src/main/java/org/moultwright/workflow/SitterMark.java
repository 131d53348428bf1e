package org.moultwright.workflow;

import java.time.Instant;
import java.util.Optional;

/** Where it stands written that the desk is in a sitter's hands, so that it still is after a restart. */
public interface SitterMark {
    /** Since when; empty where it is in the keeper's. One that cannot be read counts as written now. */
    Optional<Instant> read();

    /**
     * Writes it; it is on disk when this returns.
     *
     * @throws DocumentException if that cannot be done
     */
    void write(Instant since);

    /**
     * Takes it away.
     *
     * @throws DocumentException if that cannot be done
     */
    void remove();
}
