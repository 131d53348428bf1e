package org.moultwright.ui.climate;

import java.time.Duration;
import org.moultwright.language.Texts;

/** The age of something in a sentence: "12 minutes", "3 hours", "5 days". */
final class LongAge {
    private LongAge() {}

    static String of(Duration age) {
        if (age.toMinutes() < 120) {
            return counted(age.toMinutes(), Texts.say("minute"));
        }
        return age.toHours() < 48 ? counted(age.toHours(), Texts.say("hour")) : counted(age.toDays(), Texts.say("day"));
    }

    private static String counted(long count, String unit) {
        return count + " " + unit + (count == 1 ? "" : "s");
    }
}
