package org.moultwright.compute.alarm;

import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.moultwright.compute.alarm.AlarmState.Phase;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmKind;

/**
 * Finds out from the journal where alarms stood when the watch last ended, so that a restart neither forgets
 * one nor asks again for what the keeper has seen.
 */
public final class Resumption {
    private Resumption() {}

    /**
     * A watch that goes on from the journal. Habit, rate and silence start anew.
     *
     * @param journal the lines of one container, in the order they were written down
     */
    public static Watch of(List<AlarmEntry> journal, Instant now) {
        Map<AlarmKind, AlarmState> alarms = new EnumMap<>(AlarmKind.class);
        for (AlarmEntry entry : journal) {
            AlarmState before = alarms.getOrDefault(entry.kind(), AlarmState.QUIET);
            alarms.put(entry.kind(), after(before, entry, now));
        }
        return new Watch(alarms, Senses.START);
    }

    private static AlarmState after(AlarmState before, AlarmEntry entry, Instant now) {
        return switch (entry.turn()) {
            case RAISED -> before.resumed(Phase.ACTIVE_UNSEEN, before.snooze(), false);
            case ANNOUNCED_AGAIN -> before.resumed(Phase.ACTIVE_UNSEEN, Optional.empty(), false);
            case ESCALATED -> before.resumed(before.phase(), before.snooze(), true);
            case CLEARED ->
                before.resumed(
                        before.phase() == Phase.ACTIVE_UNSEEN ? Phase.OVER_UNSEEN : Phase.QUIET,
                        before.snooze(),
                        false);
            case ACKNOWLEDGED ->
                before.resumed(before.isActive() ? Phase.ACTIVE_SEEN : Phase.QUIET, before.snooze(), false);
            case SNOOZED ->
                before.resumed(before.phase(), entry.quietUntil().map(end -> spell(now, end)), before.isEscalated());
            case SNOOZE_ENDED -> before.resumed(before.phase(), Optional.empty(), before.isEscalated());
            case OUT_OF_SERVICE -> AlarmState.QUIET;
        };
    }

    /** One that ran out meanwhile ends with the first step. */
    private static Snooze spell(Instant now, Instant end) {
        return new Snooze(Duration.between(now, end).toMillis(), end);
    }
}
