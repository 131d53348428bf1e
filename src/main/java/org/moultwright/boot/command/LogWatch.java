package org.moultwright.boot.command;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.moultwright.domain.Reading;
import org.moultwright.store.H2Store;
import org.moultwright.store.LoggingStore;
import org.moultwright.workflow.KeepWatch;
import org.moultwright.workflow.TakenBeside;

/**
 * The watch of a logger. It goes with the store: kept here while the logger has the store, and by whoever has it
 * else, so that no alarm is raised twice and none is left out. Safe to share.
 */
final class LogWatch implements LoggingStore.Turns {
    private final Function<H2Store, KeepWatch> begins;
    private final Consumer<String> tell;
    private final Set<String> probes = new HashSet<>();
    private @Nullable KeepWatch watch;

    /**
     * @param probe what this logger listens to
     * @param begins makes a watch that writes into a store
     * @param tell says a sentence to whoever minds the logger
     */
    LogWatch(String probe, Function<H2Store, KeepWatch> begins, Consumer<String> tell) {
        this.begins = begins;
        this.tell = tell;
        probes.add(probe);
    }

    @Override
    public synchronized void has(H2Store store) {
        tell.accept("The store is kept here: readings go into it, and alarms are watched here.");
        KeepWatch begun = begins.apply(store);
        probes.forEach(begun::begin);
        watch = begun;
    }

    @Override
    public synchronized void leftTo(String who) {
        watch = null;
        tell.accept(("The store is left to another Moultwright%s. Readings are kept beside it and taken in there;"
                        + " alarms are watched there.")
                .formatted(who.isEmpty() ? "" : " (" + who + ")"));
    }

    @Override
    public synchronized void taken(List<TakenBeside> taken) {
        taken.forEach(part -> {
            KeepWatch kept = watch;
            if (kept != null && probes.add(part.probe())) {
                kept.begin(part.probe());
            }
            part.readings().forEach(logged -> heard(part.probe(), logged.reading()));
        });
    }

    /** A reading is on disk. */
    synchronized void heard(String probe, Reading reading) {
        if (watch != null) {
            watch.heard(probe, reading);
        }
    }

    synchronized void tick() {
        if (watch != null) {
            watch.tick();
        }
    }
}
