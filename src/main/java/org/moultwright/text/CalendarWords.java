package org.moultwright.text;

import java.time.Instant;
import org.moultwright.compute.forecast.InstantInterval;

/**
 * What stands in a calendar, in words that are understood without the forecast beside them.
 *
 * @param days the keeper's days
 * @param toldAt the instant of the forecast
 */
public record CalendarWords(DayWords days, Instant toldAt) {

    /** Where it comes from: "Brood CC-26-B (Genus species), box 1." */
    public static String about(String brood, String taxon, String place) {
        return "Brood %s (%s)%s.".formatted(brood, taxon, place.isEmpty() ? "" : ", " + place);
    }

    /** How sure it is, and from when. */
    public String window(InstantInterval when) {
        return "80 %% window %s, middle %s: one time in ten earlier, one time in ten later."
                .formatted(days.days(when.p10(), when.p90()), days.day(when.p50()));
    }

    public String seen(Instant at) {
        return "Seen on " + days.day(at) + ".";
    }

    /** "Told on 3 May from the counts up to then. Save the file again for newer dates." */
    public String told() {
        return "Told on " + days.day(toldAt) + " from the counts up to then. Save the file again for newer dates.";
    }
}
