package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.util.function.BiConsumer;
import org.moultwright.domain.Reading;

/** Lets the watch hear what one probe's line says, after it is on disk, and passes everything on. */
public final class WatchedLine implements LogListener {
    private final BiConsumer<String, Reading> watch;
    private final String probe;
    private final LogListener next;

    /** @param watch is told of each reading with the code of its probe */
    public WatchedLine(BiConsumer<String, Reading> watch, String probe, LogListener next) {
        this.watch = watch;
        this.probe = probe;
        this.next = next;
    }

    @Override
    public void heard(ReadingLog.Logged logged) {
        next.heard(logged);
        watch.accept(probe, logged.reading());
    }

    @Override
    public void changed(LinkState state) {
        next.changed(state);
    }

    @Override
    public void clockStepped(Instant seenAt, Duration by) {
        next.clockStepped(seenAt, by);
    }

    @Override
    public void identified(ProbeIdentity identity) {
        next.identified(identity);
    }

    @Override
    public void alsoHeard(ProbeIdentity identity) {
        next.alsoHeard(identity);
    }

    @Override
    public void notKept(AdvisedException fault) {
        next.notKept(fault);
    }

    @Override
    public void keptAgain(int waited) {
        next.keptAgain(waited);
    }

    @Override
    public void lost(int readings) {
        next.lost(readings);
    }
}
