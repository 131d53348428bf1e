package org.moultwright.text;

import java.time.Duration;
import org.moultwright.domain.AlarmEntry;
import org.moultwright.domain.AlarmKind;
import org.moultwright.domain.AlarmTurn;
import org.moultwright.language.Degrees;
import org.moultwright.language.Texts;

/** Alarms in words. */
public final class AlarmWords {
    private AlarmWords() {}

    /** "too warm". */
    public static String name(AlarmKind kind) {
        return switch (kind) {
            case HIGH -> Texts.say("too warm");
            case VERY_HIGH -> Texts.say("far too warm");
            case LOW -> Texts.say("too cool");
            case VERY_LOW -> Texts.say("far too cold");
            case RATE -> Texts.say("temperature moving fast");
            case SILENT -> Texts.say("probe silent");
            case STUCK -> Texts.say("probe stuck");
            case DRIFT -> Texts.say("drifting from its set-point");
            case CONDENSATION -> Texts.say("water on the wall");
        };
    }

    /** What to do about it. */
    public static String remedy(AlarmKind kind) {
        return switch (kind) {
            case HIGH, VERY_HIGH -> Texts.say("Look whether the heater is stuck on; open the door a little.");
            case LOW, VERY_LOW -> Texts.say("Look whether the door is shut and the heater has power.");
            case RATE -> Texts.say("Look at door, heater and where the probe lies.");
            case SILENT -> Texts.say("Check plug and battery.");
            case STUCK -> Texts.say("Warm the probe in your hand; if nothing moves, replace it.");
            case DRIFT -> Texts.say("Check the thermostat, and the display against the probe.");
            case CONDENSATION -> Texts.say("Air the box.");
        };
    }

    /** The value an alarm speaks of, such as "30.4 °C"; empty where a number would say nothing. */
    public static String value(AlarmKind kind, double value) {
        if (Double.isNaN(value)) {
            return "";
        }
        return switch (kind) {
            case HIGH, VERY_HIGH, LOW, VERY_LOW -> Degrees.words(value, 1);
            case RATE -> Texts.say("{0} {1} in 20 min", Degrees.apart(value, 1), Degrees.apartSymbol());
            case SILENT, STUCK -> DayWords.age(Duration.ofSeconds((long) value));
            case DRIFT -> "";
            case CONDENSATION ->
                Texts.say(
                        value < 0 ? "wall {0} {1} below dew point" : "wall {0} {1} above dew point",
                        Degrees.apart(Math.abs(value), 1),
                        Degrees.apartSymbol());
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
            case RAISED -> Texts.say("raised");
            case CLEARED -> Texts.say("over");
            case ACKNOWLEDGED -> Texts.say("seen");
            case SNOOZED -> Texts.say("quiet for a while");
            case SNOOZE_ENDED -> Texts.say("quiet ended");
            case ANNOUNCED_AGAIN -> Texts.say("still there");
            case ESCALATED -> Texts.say("nobody has seen it");
            case OUT_OF_SERVICE -> Texts.say("no longer watched");
        };
    }
}
