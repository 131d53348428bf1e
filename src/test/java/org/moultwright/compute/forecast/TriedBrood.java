package org.moultwright.compute.forecast;

import java.time.Duration;
import java.time.Instant;
import org.moultwright.domain.BroodRecord;

/**
 * An invented brood with its truth, as a back test needs it. Days are counted from {@link #START}.
 *
 * <p>Boundaries are numbered from the entering of the second stage on; the last one is what is judged.
 */
interface TriedBrood {
    Instant START = Instant.parse("2026-02-01T00:00:00Z");

    /** What its keeper wrote down. */
    BroodRecord record();

    int trayCount();

    /** The day it came into trays. */
    double pulledDay();

    double laidDay();

    /** Median age at each boundary its keeper believes in, in days at the reference temperature. */
    double[] believed();

    /** The day so far along the calendar, by what is believed, towards the last boundary. */
    double asOfDay(double share);

    /** The truth of a milestone: the day the n-th of those that ever pass does; NaN if none does. */
    double trueDay(int tray, int boundary, Milestone milestone);

    /** The day by which half of the animals of all trays that ever pass a boundary have; NaN if none does. */
    double halfDay(int boundary);

    /** Animals that came into trays. */
    int animals();

    /** Those of them alive on a day. */
    int alive(double day);

    /** How many of them pass the last boundary in the end. */
    int trueYield();

    /** Days at the reference temperature between two days, by the displayed set-point and the stated rate. */
    double setPointDaysBetween(double fromDay, double toDay);

    /** The day by which so many of them have passed. */
    double dayAfter(double fromDay, double setPointDays);

    default int boundaries() {
        return believed().length;
    }

    static Instant at(double day) {
        return START.plusMillis(Math.round(day * Duration.ofDays(1).toMillis()));
    }

    static double day(Instant instant) {
        return Duration.between(START, instant).toMillis()
                / (double) Duration.ofDays(1).toMillis();
    }
}
