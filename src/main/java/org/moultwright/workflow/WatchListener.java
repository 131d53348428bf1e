package org.moultwright.workflow;

import org.moultwright.domain.AlarmEntry;

/** Is told what the watch finds, on the thread it found it on. Must return soon. */
public interface WatchListener {

    /** Something happened to an alarm and is in the journal. */
    void turned(AlarmEntry entry);

    /** The watch stands so now; told after every reading and every few seconds. */
    void stands(WatchView view);
}
