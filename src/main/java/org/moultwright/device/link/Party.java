package org.moultwright.device.link;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.moultwright.device.DeviceException;
import org.moultwright.workflow.LinkState;
import org.moultwright.workflow.ProbeIdentity;

/**
 * The ears at one wire: several sensors may speak on it, each heard by a link of its own. It ends when the last ear
 * leaves. Safe for several threads; no ear is told anything once it has left.
 */
public final class Party implements WireListener {
    private final List<Ear> ears = new CopyOnWriteArrayList<>();
    private Optional<LinkState> state = Optional.empty();
    private boolean ended;

    public Party(Ear first) {
        ears.add(first);
    }

    /** Adds an ear, unless the party has ended; it is told how the wire is doing. */
    public synchronized boolean join(Ear ear) {
        if (!ended) {
            ears.add(ear);
            state.ifPresent(ear::changed);
        }
        return !ended;
    }

    /** Takes an ear away; whether that ends the party. */
    public synchronized boolean leave(Ear ear) {
        ears.remove(ear);
        ended = ears.isEmpty();
        return ended;
    }

    /** A probe that is wanted at this wire. */
    public synchronized ProbeIdentity identity() {
        return ears.isEmpty() ? ProbeIdentity.UNKNOWN : ears.get(0).identity();
    }

    /** Whether a wanted probe was heard since the wire was last opened. */
    public synchronized boolean hasHeardOwn() {
        return ears.stream().anyMatch(Ear::hasHeardOwn);
    }

    /**
     * The wire is opened anew.
     *
     * @param adapter what it hangs on now, empty if that has no number of its own
     */
    public synchronized void opened(String adapter) {
        ears.forEach(ear -> ear.opened(adapter));
    }

    /**
     * Every ear takes what came.
     *
     * @throws DeviceException if only others speak, and none of the probes that are wanted
     */
    @Override
    public synchronized void heard(Heard heard) {
        Optional<DeviceException> stranger = Optional.empty();
        for (Ear ear : ears) {
            try {
                ear.heard(heard);
            } catch (DeviceException e) {
                stranger = Optional.of(e);
            }
        }
        if (stranger.isPresent() && !hasHeardOwn()) {
            throw stranger.get();
        }
    }

    @Override
    public synchronized void changed(LinkState next) {
        state = Optional.of(next);
        ears.forEach(ear -> ear.changed(next));
    }

    @Override
    public synchronized void clockStepped(Instant seenAt, Duration by) {
        ears.forEach(ear -> ear.clockStepped(seenAt, by));
    }
}
