package org.moultwright.compute.alarm;

import java.time.Duration;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.Require;

/**
 * When an alarm of one kind is raised and cleared. The words follow OPC UA part 9, version 1.05.
 *
 * @param kind what it warns of
 * @param limit the last value that is not exceeded; °C for temperatures, see {@link AlarmRules} for the others
 * @param deadband how far within the limit a value must come back before it counts as clear
 * @param onDelay how long the limit must be seen exceeded before the alarm is raised
 * @param offDelay how long it must be seen clear before the alarm is cleared
 * @param longestGap observations further apart than this say nothing of the time between them
 * @param escalateAfter how long it may stand unseen before it escalates
 */
public record AlarmRule(
        AlarmKind kind,
        double limit,
        double deadband,
        Duration onDelay,
        Duration offDelay,
        Duration longestGap,
        Duration escalateAfter) {
    public AlarmRule {
        Require.within("limit", limit, -1e9, 1e9);
        Require.within("deadband", deadband, 0, 1e9);
        notNegative("onDelay", onDelay);
        notNegative("offDelay", offDelay);
        notNegative("longestGap", longestGap);
        notNegative("escalateAfter", escalateAfter);
    }

    /** What a value says; NaN says nothing. */
    Sign sign(double value) {
        if (Double.isNaN(value)) {
            return Sign.UNKNOWN;
        }
        double beyond = kind.isBelow() ? limit - value : value - limit;
        if (beyond > 0) {
            return Sign.EXCEEDED;
        }
        return beyond < -deadband ? Sign.CLEAR : Sign.BETWEEN;
    }

    private static void notNegative(String field, Duration value) {
        Require.that(!value.isNegative(), field + " is " + value + " but must not be negative");
    }
}
