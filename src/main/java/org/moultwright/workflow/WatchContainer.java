package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.moultwright.compute.alarm.AlarmState;
import org.moultwright.compute.alarm.Observation;
import org.moultwright.compute.alarm.Resumption;
import org.moultwright.compute.alarm.Watch;
import org.moultwright.compute.alarm.WatchSettings;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.AlarmTurn;

/**
 * Keeps the watch over one container while the program runs, and writes into the journal what happens.
 *
 * <p>What it shows has been written down: a line that could not be kept is not shown as done, and the step it
 * belongs to is taken again with the next one. It goes on from the journal. Safe to share between threads.
 */
public final class WatchContainer {
    private static final long NANOS_PER_MILLI = 1_000_000;

    private final String container;
    private final AlarmJournal journal;
    private final InstantSource clock;
    private final LongSupplier steadyNanos;
    private final Supplier<UUID> ids;
    private final Consumer<AlarmEntry> whenWritten;
    private final Map<AlarmKind, AlarmEntry> raised = new EnumMap<>(AlarmKind.class);
    private WatchSettings settings;
    private Watch watch;
    private long lastNanos;

    /**
     * @param steadyNanos the steady clock, such as {@link System#nanoTime}
     * @param whenWritten is told of each line once it is in the journal
     */
    public WatchContainer(
            String container,
            WatchSettings settings,
            AlarmJournal journal,
            InstantSource clock,
            LongSupplier steadyNanos,
            Supplier<UUID> ids,
            Consumer<AlarmEntry> whenWritten) {
        this.container = container;
        this.settings = settings;
        this.journal = journal;
        this.clock = clock;
        this.steadyNanos = steadyNanos;
        this.ids = ids;
        this.whenWritten = whenWritten;
        List<AlarmEntry> written = journal.of(container);
        written.forEach(this::noteRaised);
        this.watch = Resumption.of(written, clock.instant());
        this.lastNanos = steadyNanos.getAsLong();
    }

    /**
     * Goes on from readings of before the watch began, so that habit and rate need not be heard anew. No alarm
     * comes of them.
     *
     * @param past in order of time, each with the time since the one before
     */
    public synchronized void remember(List<Observation> past) {
        if (past.isEmpty()) {
            return;
        }
        Duration pause = Duration.between(past.get(past.size() - 1).at(), clock.instant());
        watch = watch.remembering(settings, past, Math.max(0, pause.toMillis()));
    }

    /** A good reading came. */
    public synchronized void heard(Observation.Sample sample) {
        observe(Optional.of(sample));
    }

    /** Time went by; to be called every few seconds. */
    public synchronized void tick() {
        observe(Optional.empty());
    }

    public synchronized AlarmState alarm(AlarmKind kind) {
        return watch.alarm(kind);
    }

    /** The line that says when and at what an alarm was last raised, if it ever was. */
    public synchronized Optional<AlarmEntry> raised(AlarmKind kind) {
        return Optional.ofNullable(raised.get(kind));
    }

    /** The keeper has seen an alarm; on disk when this returns. */
    public synchronized void acknowledge(AlarmKind kind) {
        take(watch.acknowledge(kind, clock.instant()), Optional.empty());
    }

    /** The keeper wants no sound of an alarm for a while; on disk when this returns. */
    public synchronized void snooze(AlarmKind kind, Duration length) {
        Instant now = clock.instant();
        take(watch.snooze(kind, length, now), Optional.of(now.plus(length)));
    }

    /** Watches by other rules from now on. */
    public synchronized void watchBy(WatchSettings others) {
        settings = others;
    }

    /** Watches no longer; alarms that stood are written down as out of service. */
    public synchronized void end() {
        settings = new WatchSettings(
                Map.of(), settings.longestGap(), settings.settling(), settings.rateMinutes(), settings.drift());
        tick();
    }

    /** Learns the incubator's habit anew: after a calibration, or when the keeper accepts what it does now. */
    public synchronized void relearnHabit() {
        take(watch.relearnHabit(clock.instant()), Optional.empty());
    }

    private void observe(Optional<Observation.Sample> sample) {
        long nanos = steadyNanos.getAsLong();
        long elapsedMillis = (nanos - lastNanos) / NANOS_PER_MILLI;
        take(watch.step(settings, new Observation(clock.instant(), elapsedMillis, sample)), Optional.empty());
        lastNanos += elapsedMillis * NANOS_PER_MILLI;
    }

    private void take(Watch.Step step, Optional<Instant> quietUntil) {
        List<AlarmEntry> entries =
                step.events().stream().map(event -> entry(event, quietUntil)).toList();
        if (!entries.isEmpty()) {
            journal.append(entries);
        }
        watch = step.watch();
        entries.forEach(this::noteRaised);
        entries.forEach(whenWritten);
    }

    private void noteRaised(AlarmEntry entry) {
        if (entry.turn() == AlarmTurn.RAISED) {
            raised.put(entry.kind(), entry);
        }
    }

    private AlarmEntry entry(Watch.Event event, Optional<Instant> quietUntil) {
        return new AlarmEntry(
                ids.get(),
                event.at(),
                container,
                event.kind(),
                event.turn(),
                event.value(),
                quietUntil.filter(end -> event.turn() == AlarmTurn.SNOOZED));
    }
}
