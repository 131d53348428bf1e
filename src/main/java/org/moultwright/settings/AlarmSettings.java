package org.moultwright.settings;

import org.moultwright.domain.AlarmLimits;

/**
 * How the keeper wants to be woken.
 *
 * @param limits for containers without a set-point; those with one have theirs moved along with it
 * @param isWallWatched whether water on a wall is warned of, where something tells how cold the wall is
 * @param isHeard whether alarms sound
 * @param isNoticed whether the machine's desktop shows a notice
 * @param command what the logger without a window runs at an alarm; empty for nothing
 */
public record AlarmSettings(
        AlarmLimits limits, boolean isWallWatched, boolean isHeard, boolean isNoticed, String command) {
    public static final AlarmSettings DEFAULT = new AlarmSettings(AlarmLimits.USUAL, true, true, true, "");

    public AlarmSettings withLimits(AlarmLimits others) {
        return new AlarmSettings(others, isWallWatched, isHeard, isNoticed, command);
    }

    public AlarmSettings wallWatched(boolean whether) {
        return new AlarmSettings(limits, whether, isHeard, isNoticed, command);
    }

    public AlarmSettings heard(boolean whether) {
        return new AlarmSettings(limits, isWallWatched, whether, isNoticed, command);
    }

    public AlarmSettings noticed(boolean whether) {
        return new AlarmSettings(limits, isWallWatched, isHeard, whether, command);
    }

    public AlarmSettings withCommand(String other) {
        return new AlarmSettings(limits, isWallWatched, isHeard, isNoticed, other);
    }
}
