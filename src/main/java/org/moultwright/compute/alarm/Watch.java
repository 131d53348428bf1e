package org.moultwright.compute.alarm;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.AlarmTurn;

/**
 * The watch over one container: where each of its alarms stands, and what it remembers to judge the next
 * observation.
 *
 * <p>Immutable: a step makes a new watch. The same observations always give the same turns, and the wall
 * clock has no part in it but to end snoozes.
 *
 * @param alarms by kind; a kind that is missing has never been heard of
 */
public record Watch(Map<AlarmKind, AlarmState> alarms, Senses senses) {
    public static final Watch START = new Watch(Map.of(), Senses.START);

    /** Something that happened to an alarm, and the value it happened at, NaN where there is none. */
    public record Event(AlarmKind kind, AlarmTurn turn, Instant at, double value) {}

    /** The watch after a step, and what happened in it. */
    public record Step(Watch watch, List<Event> events) {}

    public AlarmState alarm(AlarmKind kind) {
        return alarms.getOrDefault(kind, AlarmState.QUIET);
    }

    /** Takes in an observation. */
    public Step step(WatchSettings settings, Observation observed) {
        Senses now = senses.after(settings, observed);
        Map<AlarmKind, AlarmState> next = new EnumMap<>(AlarmKind.class);
        List<Event> events = new ArrayList<>();
        settings.rules().forEach((kind, rule) -> {
            double value = now.value(settings, kind, observed);
            AlarmState.Step step =
                    alarm(kind).step(rule, now.sign(rule, value, observed), observed.at(), observed.elapsedMillis());
            next.put(kind, step.state());
            step.turns().forEach(turn -> events.add(new Event(kind, turn, observed.at(), value)));
        });
        alarms.forEach((kind, state) -> {
            if (!next.containsKey(kind) && state.phase() != AlarmState.Phase.QUIET) {
                events.add(new Event(kind, AlarmTurn.OUT_OF_SERVICE, observed.at(), Double.NaN));
            }
        });
        return new Step(new Watch(next, now), events);
    }

    /**
     * This watch with the memory of readings from before it began; no alarm comes of them.
     *
     * @param past in order of time, each with the time since the one before
     * @param pauseMillis from the last of them until now
     */
    public Watch remembering(WatchSettings settings, List<Observation> past, long pauseMillis) {
        return new Watch(alarms, Senses.through(settings, past, pauseMillis));
    }

    /** The keeper has seen an alarm. */
    public Step acknowledge(AlarmKind kind, Instant at) {
        return with(kind, alarm(kind).acknowledge(), at);
    }

    /** The keeper wants no sound of an alarm for a while. */
    public Step snooze(AlarmKind kind, Duration length, Instant at) {
        return with(kind, alarm(kind).snooze(length, at), at);
    }

    /** The keeper takes what the incubator does now for its habit, so that a drift from the old one is over. */
    public Step relearnHabit(Instant at) {
        AlarmState drift = alarm(AlarmKind.DRIFT);
        AlarmState.Step over = drift.isActive()
                ? new AlarmState.Step(AlarmState.QUIET, List.of(AlarmTurn.CLEARED))
                : new AlarmState.Step(drift, List.of());
        Step step = with(AlarmKind.DRIFT, over, at);
        return new Step(new Watch(step.watch().alarms(), senses.relearningHabit()), step.events());
    }

    private Step with(AlarmKind kind, AlarmState.Step step, Instant at) {
        Map<AlarmKind, AlarmState> next = new EnumMap<>(AlarmKind.class);
        next.putAll(alarms);
        next.put(kind, step.state());
        return new Step(
                new Watch(next, senses),
                step.turns().stream()
                        .map(turn -> new Event(kind, turn, at, Double.NaN))
                        .toList());
    }
}
