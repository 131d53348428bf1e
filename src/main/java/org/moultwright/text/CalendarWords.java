package org.moultwright.text;

import java.time.Instant;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.language.Texts;

/**
 * What stands in a calendar, in words that are understood without the forecast beside them.
 *
 * @param days the keeper's days
 * @param toldAt the instant of the forecast
 */
public record CalendarWords(DayWords days, Instant toldAt) {

    /** Where it comes from: "Brood CC-26-B (Genus species), box 1." */
    public static String about(String brood, String taxon, String place) {
        return Texts.say("Brood {0} ({1}){2}.", brood, taxon, place.isEmpty() ? "" : ", " + place);
    }

    /** How sure it is, and from when. */
    public String window(InstantInterval when) {
        return Texts.say(
                "80 % window {0}, middle {1}: one time in ten earlier, one time in ten later.",
                days.days(when.p10(), when.p90()), days.day(when.p50()));
    }

    public String seen(Instant at) {
        return Texts.say("Seen on {0}.", days.day(at));
    }

    /** "Told on 3 May from the counts up to then. Save the file again for newer dates." */
    public String told() {
        return Texts.say(
                "Told on {0} from the counts up to then. Save the file again for newer dates.", days.day(toldAt));
    }
}
