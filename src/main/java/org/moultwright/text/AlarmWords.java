package org.moultwright.text;

import java.time.Duration;
import java.util.Locale;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.AlarmTurn;

/** Alarms in words. */
public final class AlarmWords {
    private AlarmWords() {}

    /** "too warm". */
    public static String name(AlarmKind kind) {
        return switch (kind) {
            case HIGH -> "too warm";
            case VERY_HIGH -> "far too warm";
            case LOW -> "too cool";
            case VERY_LOW -> "far too cold";
            case RATE -> "temperature moving fast";
            case SILENT -> "probe silent";
            case STUCK -> "probe stuck";
            case DRIFT -> "drifting from its set-point";
            case CONDENSATION -> "water on the wall";
        };
    }

    /** What to do about it. */
    public static String remedy(AlarmKind kind) {
        return switch (kind) {
            case HIGH, VERY_HIGH -> "Look whether the heater is stuck on; open the door a little.";
            case LOW, VERY_LOW -> "Look whether the door is shut and the heater has power.";
            case RATE -> "Look at door, heater and where the probe lies.";
            case SILENT -> "Check plug and battery.";
            case STUCK -> "Warm the probe in your hand; if nothing moves, replace it.";
            case DRIFT -> "Check the thermostat, and the display against the probe.";
            case CONDENSATION -> "Air the box.";
        };
    }

    /** The value an alarm speaks of, such as "30.4 °C"; empty where a number would say nothing. */
    public static String value(AlarmKind kind, double value) {
        if (Double.isNaN(value)) {
            return "";
        }
        return switch (kind) {
            case HIGH, VERY_HIGH, LOW, VERY_LOW -> String.format(Locale.ROOT, "%.1f °C", value);
            case RATE -> String.format(Locale.ROOT, "%.1f K in 20 min", value);
            case SILENT, STUCK -> DayWords.age(Duration.ofSeconds((long) value));
            case DRIFT -> "";
            case CONDENSATION ->
                String.format(Locale.ROOT, "wall %.1f K %s dew point", Math.abs(value), value < 0 ? "below" : "above");
        };
    }

    /** "box 1 too warm, 29.3 °C" where it was raised, else "box 1 too warm: acknowledged". */
    public static String line(AlarmEntry entry) {
        String alarm = entry.container() + " " + name(entry.kind());
        if (entry.turn() != AlarmTurn.RAISED) {
            return alarm + ": " + turn(entry.turn());
        }
        String value = value(entry.kind(), entry.value());
        return value.isEmpty() ? alarm : alarm + ", " + value;
    }

    /** "seen". */
    public static String turn(AlarmTurn turn) {
        return switch (turn) {
            case RAISED -> "raised";
            case CLEARED -> "over";
            case ACKNOWLEDGED -> "seen";
            case SNOOZED -> "quiet for a while";
            case SNOOZE_ENDED -> "quiet ended";
            case ANNOUNCED_AGAIN -> "still there";
            case ESCALATED -> "nobody has seen it";
            case OUT_OF_SERVICE -> "no longer watched";
        };
    }
}
