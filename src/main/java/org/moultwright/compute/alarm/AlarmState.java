package org.moultwright.compute.alarm;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.moultwright.domain.AlarmTurn;
import org.moultwright.domain.Require;

/**
 * Where one alarm stands.
 *
 * <p>All its times run by the steady clock, handed in step by step, so that a wall clock that is set neither
 * raises an alarm nor swallows one. Immutable.
 *
 * @param phase whether it stands and was seen
 * @param delays how long its limit was seen exceeded, or clear
 * @param snooze the quiet spell the keeper asked for
 * @param activeMillis how long it has stood
 * @param unseenMillis how long of that it could be heard and was not seen
 * @param isEscalated whether that was too long
 */
public record AlarmState(
        Phase phase,
        Delays delays,
        Optional<Snooze> snooze,
        long activeMillis,
        long unseenMillis,
        boolean isEscalated) {
    public static final AlarmState QUIET = in(Phase.QUIET, Delays.NONE, Optional.empty());

    /** Whether an alarm stands, and whether the keeper has seen it. */
    public enum Phase {
        QUIET,
        ACTIVE_UNSEEN,
        ACTIVE_SEEN,
        /** Over before anybody had seen it; it stays shown until somebody has. */
        OVER_UNSEEN
    }

    /** A new state and what happened on the way to it, in order. */
    public record Step(AlarmState state, List<AlarmTurn> turns) {
        public Step {
            turns = List.copyOf(turns);
        }
    }

    public boolean isActive() {
        return phase == Phase.ACTIVE_UNSEEN || phase == Phase.ACTIVE_SEEN;
    }

    /** Whether it should be heard now. */
    public boolean isSounding() {
        return phase == Phase.ACTIVE_UNSEEN && snooze.isEmpty();
    }

    /**
     * Takes in what was observed.
     *
     * @param at the wall clock, which only ends snoozes
     * @param elapsedMillis since the last step by the steady clock, never negative
     */
    Step step(AlarmRule rule, Sign sign, Instant at, long elapsedMillis) {
        Require.that(elapsedMillis >= 0, "elapsedMillis is " + elapsedMillis + " but must not be negative");
        if (isAtRest() && sign != Sign.EXCEEDED) {
            return new Step(QUIET, List.of());
        }
        List<AlarmTurn> turns = new ArrayList<>();
        AlarmState next = aged(delays.after(rule, sign, elapsedMillis), elapsedMillis);
        if (!next.isActive() && next.delays.raises(rule)) {
            turns.add(AlarmTurn.RAISED);
            next = in(Phase.ACTIVE_UNSEEN, next.delays, next.snooze);
        } else if (next.isActive() && next.delays.clears(rule)) {
            turns.add(AlarmTurn.CLEARED);
            next = in(next.phase == Phase.ACTIVE_UNSEEN ? Phase.OVER_UNSEEN : Phase.QUIET, next.delays, next.snooze);
        }
        if (next.snooze.filter(spell -> spell.isOver(at)).isPresent()) {
            turns.add(AlarmTurn.SNOOZE_ENDED);
            next = next.heardAgain(turns);
        }
        if (next.isSounding()
                && !next.isEscalated
                && next.unseenMillis >= rule.escalateAfter().toMillis()) {
            turns.add(AlarmTurn.ESCALATED);
            next = new AlarmState(next.phase, next.delays, next.snooze, next.activeMillis, next.unseenMillis, true);
        }
        return new Step(next, turns);
    }

    /** The keeper has seen it. Nothing happens if there was nothing to see. */
    Step acknowledge() {
        return switch (phase) {
            case QUIET, ACTIVE_SEEN -> new Step(this, List.of());
            case ACTIVE_UNSEEN ->
                new Step(
                        new AlarmState(Phase.ACTIVE_SEEN, delays, snooze, activeMillis, 0, false),
                        List.of(AlarmTurn.ACKNOWLEDGED));
            case OVER_UNSEEN -> new Step(in(Phase.QUIET, delays, snooze), List.of(AlarmTurn.ACKNOWLEDGED));
        };
    }

    /** The keeper wants no sound for a while, whether it stands already or may yet. */
    Step snooze(Duration length, Instant at) {
        Require.that(!length.isNegative() && !length.isZero(), "length is " + length + " but must be above 0");
        Snooze spell = new Snooze(length.toMillis(), at.plus(length));
        return new Step(
                new AlarmState(phase, delays, Optional.of(spell), activeMillis, 0, false), List.of(AlarmTurn.SNOOZED));
    }

    AlarmState resumed(Phase then, Optional<Snooze> spell, boolean escalated) {
        return new AlarmState(then, Delays.NONE, spell, 0, 0, escalated);
    }

    private boolean isAtRest() {
        return phase == Phase.QUIET && snooze.isEmpty() && delays.last() != Sign.EXCEEDED;
    }

    private AlarmState aged(Delays now, long elapsedMillis) {
        return new AlarmState(
                phase,
                now,
                snooze.map(spell -> spell.after(elapsedMillis)),
                isActive() ? activeMillis + elapsedMillis : 0,
                isSounding() ? unseenMillis + elapsedMillis : 0,
                isEscalated);
    }

    private AlarmState heardAgain(List<AlarmTurn> turns) {
        if (!isActive()) {
            return in(phase, delays, Optional.empty());
        }
        turns.add(AlarmTurn.ANNOUNCED_AGAIN);
        return new AlarmState(Phase.ACTIVE_UNSEEN, delays, Optional.empty(), activeMillis, 0, false);
    }

    private static AlarmState in(Phase phase, Delays delays, Optional<Snooze> snooze) {
        return new AlarmState(phase, delays, snooze, 0, 0, false);
    }
}
