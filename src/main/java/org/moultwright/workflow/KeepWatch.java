package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.moultwright.compute.alarm.AlarmState;
import org.moultwright.compute.psychro.MeasuredAir;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.AlarmLimits;
import org.moultwright.domain.ColdestWall;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;

/**
 * Keeps the watch over every probe that is listened to, by its container's rules.
 *
 * <p>Begun with the readings of the last {@link #REMEMBERED}, so that a restart costs no habit. What it shows is
 * in the journal; a journal that cannot be written is said in the view, ends nothing and is tried again. Safe to
 * share between threads.
 */
public final class KeepWatch {
    /** How often {@link #tick} is to be called. */
    public static final Duration USUAL_TICK = Duration.ofSeconds(3);

    /** A whole day of habit, the settling before it, and an hour to spare. */
    public static final Duration REMEMBERED = Duration.ofHours(27);

    private final AlarmJournal journal;
    private final ReadingLog log;
    private final InstantSource clock;
    private final LongSupplier steadyNanos;
    private final Supplier<UUID> ids;
    private final WatchListener listener;
    private final Set<String> listenedTo = new TreeSet<>();
    private final Map<String, ProbeWatch> byProbe = new TreeMap<>();
    private WatchPlaces places;
    private AlarmLimits limits;
    /** By probe, until something of it could be written down or need not be any more. */
    private final Map<String, RuntimeException> faults = new TreeMap<>();

    /**
     * @param steadyNanos the steady clock, such as {@link System#nanoTime}
     * @param places as they are to begin with
     * @param limits the keeper's, for where nothing is set
     */
    public KeepWatch(
            AlarmJournal journal,
            ReadingLog log,
            InstantSource clock,
            LongSupplier steadyNanos,
            Supplier<UUID> ids,
            WatchPlaces places,
            AlarmLimits limits,
            WatchListener listener) {
        this.journal = journal;
        this.log = log;
        this.clock = clock;
        this.steadyNanos = steadyNanos;
        this.ids = ids;
        this.places = places;
        this.limits = limits;
        this.listener = listener;
    }

    /** A probe is listened to from now on; a second time changes nothing. */
    public synchronized void begin(String probe) {
        listenedTo.add(probe);
        beginMissing();
        tell();
    }

    /** The keeper no longer listens to a probe: what stood is out of service. */
    public synchronized void end(String probe) {
        Optional.ofNullable(byProbe.remove(probe))
                .ifPresent(watch -> attempt(probe, () -> watch.watching().end()));
        listenedTo.remove(probe);
        tell();
    }

    /** A reading is on disk. Only a good one of a probe listened to says anything. */
    public synchronized void heard(String probe, Reading reading) {
        ProbeWatch watch = byProbe.get(probe);
        if (watch != null && reading.quality() == Quality.GOOD) {
            Instant now = clock.instant();
            if (attempt(probe, () -> watch.heard(reading, onWall(probe, now), now))) {
                faults.remove(probe);
            }
            tell();
        }
    }

    /** Time went by; to be called every few seconds. */
    public synchronized void tick() {
        Instant now = clock.instant();
        beginMissing();
        byProbe.forEach((probe, watch) -> attempt(probe, () -> watch.tick(now)));
        tell();
    }

    /** Places, calibrations or limits may be others now. */
    public synchronized void follow(WatchPlaces others, AlarmLimits otherLimits) {
        Instant now = clock.instant();
        places = others;
        limits = otherLimits;
        byProbe.replaceAll((probe, watch) -> followed(probe, watch, now));
        tell();
    }

    /** The keeper has seen every alarm there is; on disk when this returns. */
    public synchronized void acknowledge() {
        everyAlarm((watching, kind) -> watching.acknowledge(kind));
    }

    /** The keeper wants no sound of what stands for a while; on disk when this returns. */
    public synchronized void snooze(Duration length) {
        everyAlarm((watching, kind) -> watching.snooze(kind, length));
    }

    private Optional<MeasuredAir.Wall> onWall(String probe, Instant now) {
        return places.wall(probe, now)
                .flatMap(ColdestWall::probe)
                .flatMap(onWall -> Optional.ofNullable(byProbe.get(onWall)))
                .flatMap(watch -> watch.wall(now));
    }

    private ProbeWatch followed(String probe, ProbeWatch watch, Instant now) {
        ProbeWatch[] next = {watch};
        attempt(probe, () -> {
            if (watch.name().equals(places.name(probe, now))) {
                watch.standsIn(places, limits, now);
            } else {
                watch.watching().end();
                next[0] = begun(probe);
            }
        });
        return next[0];
    }

    /** Those whose watch could not begin yet, as while the store could not be read, are begun now. */
    private void beginMissing() {
        for (String probe : listenedTo) {
            if (!byProbe.containsKey(probe) && attempt(probe, () -> byProbe.put(probe, begun(probe)))) {
                faults.remove(probe);
            }
        }
    }

    private ProbeWatch begun(String probe) {
        Instant now = clock.instant();
        String name = places.name(probe, now);

        WatchContainer watching =
                new WatchContainer(name, ProbeWatch.firstRules(limits), journal, clock, steadyNanos, ids, entry -> {
                    faults.remove(probe);
                    listener.turned(entry);
                });
        ProbeWatch watch = new ProbeWatch(probe, name, watching, places, limits);
        watch.remember(log.series(probe, now.minus(REMEMBERED), now), now);
        return watch;
    }

    private void everyAlarm(AlarmDeed deed) {
        byProbe.values().forEach(watch -> {
            for (AlarmKind kind : AlarmKind.values()) {
                if (watch.watching().alarm(kind).phase() != AlarmState.Phase.QUIET) {
                    deed.on(watch.watching(), kind);
                }
            }
        });
        tell();
    }

    /** Whether it could be done. A fault, whatever it is, must neither end the watch nor the logging it hangs on. */
    private boolean attempt(String probe, Runnable step) {
        try {
            step.run();
            return true;
        } catch (RuntimeException fault) {
            faults.put(probe, fault);
            return false;
        }
    }

    private void tell() {
        listener.stands(new WatchView(
                byProbe.values().stream().map(ProbeWatch::place).toList(),
                byProbe.values().stream()
                        .flatMap(watch -> watch.alarms().stream())
                        .toList(),
                faults.values().stream().findFirst()));
    }

    private interface AlarmDeed {
        void on(WatchContainer watching, AlarmKind kind);
    }
}
