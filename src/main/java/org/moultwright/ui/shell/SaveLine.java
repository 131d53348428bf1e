package org.moultwright.ui.shell;

import java.time.Instant;

/** Where screens say what they have saved, so that the top line shows it and offers to take it back. */
public interface SaveLine {
    /**
     * Something is on disk.
     *
     * @param at when it was saved
     * @param undo takes it back
     */
    void saved(Instant at, Runnable undo);
}
