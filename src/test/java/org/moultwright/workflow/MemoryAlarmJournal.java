package org.moultwright.workflow;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.moultwright.domain.AlarmEntry;

/** A journal in memory that can be told to fail. */
public final class MemoryAlarmJournal implements AlarmJournal {
    private final List<AlarmEntry> entries = new ArrayList<>();
    private boolean isFull;

    public void fill(boolean full) {
        isFull = full;
    }

    @Override
    public void append(List<AlarmEntry> added) {
        if (isFull) {
            throw new IllegalStateException("the disk is full");
        }
        entries.addAll(added);
    }

    @Override
    public List<AlarmEntry> between(Instant from, Instant to) {
        return entries.stream()
                .filter(entry -> !entry.at().isBefore(from) && entry.at().isBefore(to))
                .toList();
    }

    @Override
    public List<AlarmEntry> of(String container) {
        return entries.stream()
                .filter(entry -> entry.container().equals(container))
                .toList();
    }
}
