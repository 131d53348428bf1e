package org.moultwright.compute.alarm;

import java.util.ArrayList;
import java.util.List;

/**
 * Notices how far the temperature has moved since some while ago, by minute means.
 *
 * @param minutes the minutes heard lately, oldest first, the last of them still going on
 */
public record RateSense(List<Minute> minutes) {
    static final RateSense START = new RateSense(List.of());

    /** Both ends of the comparison are means over so many minutes, so that noise and a draught count little. */
    private static final int END_MINUTES = 3;

    private static final long MILLIS = 60_000;

    /** The readings of one minute of the steady clock. */
    record Minute(long number, double sumCelsius, int readings) {
        Minute with(double celsius) {
            return new Minute(number, sumCelsius + celsius, readings + 1);
        }
    }

    RateSense after(double celsius, long steadyMillis, int overMinutes) {
        long number = steadyMillis / MILLIS;
        int last = minutes.size() - 1;
        boolean goesOn = last >= 0 && minutes.get(last).number() == number;
        List<Minute> kept = new ArrayList<>(minutes.size() + 1);
        long oldest = number - overMinutes - END_MINUTES;
        for (Minute minute : goesOn ? minutes.subList(0, last) : minutes) {
            if (minute.number() > oldest) {
                kept.add(minute);
            }
        }
        kept.add((goesOn ? minutes.get(last) : new Minute(number, 0, 0)).with(celsius));
        return new RateSense(kept);
    }

    /** How far it has moved over so many minutes, either way, in K; NaN if that cannot be told. */
    double movedCelsius(int overMinutes) {
        if (minutes.isEmpty()) {
            return Double.NaN;
        }
        long now = minutes.get(minutes.size() - 1).number();
        return Math.abs(meanUpTo(now) - meanUpTo(now - overMinutes));
    }

    private double meanUpTo(long last) {
        double sum = 0;
        int readings = 0;
        for (Minute minute : minutes) {
            if (minute.number() > last - END_MINUTES && minute.number() <= last) {
                sum += minute.sumCelsius();
                readings += minute.readings();
            }
        }
        return sum / readings;
    }
}
