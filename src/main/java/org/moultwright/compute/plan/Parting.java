package org.moultwright.compute.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.moultwright.compute.forecast.HandsEvent;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;

/** When the slings of a tray have to be parted, and when they begin to eat. */
public final class Parting {
    /** A sling takes its first meal about a week after its moult: common practice, no source. */
    public static final Duration FIRST_MEAL = Duration.ofDays(7);

    private Parting() {}

    /** When the first one enters the stage; certain where it was seen. */
    public static InstantInterval first(MoultForecast moult, Optional<Instant> seen) {
        return seen.filter(at -> moult.hasBegun()).map(InstantInterval::certain).orElse(moult.first());
    }

    /** The day to part them by: that of an early first one, so that nine of ten are parted in time. */
    public static Instant due(InstantInterval first) {
        return first.p10().plus(HandsEvent.TOGETHER);
    }
}
