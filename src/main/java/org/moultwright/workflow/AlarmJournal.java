package org.moultwright.workflow;

import java.time.Instant;
import java.util.List;
import org.moultwright.domain.AlarmEntry;

/**
 * The journal of alarms. It tells what happened, so that nothing in it is ever undone or edited.
 */
public interface AlarmJournal {

    /** Adds lines, all or none; they are on disk when this returns. One already there by id stays as it is. */
    void append(List<AlarmEntry> entries);

    /** The lines from one instant up to another, the latter left out, in the order they were written down. */
    List<AlarmEntry> between(Instant from, Instant to);

    /** Every line of one container, in the order they were written down. */
    List<AlarmEntry> of(String container);
}
