package org.moultwright.compute.climate;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.moultwright.domain.BroodRecord;

/**
 * The temperature the animals of one tray lived, without a hole, from the origin of their age on.
 *
 * <p>At each instant it is that of the innermost probe around them that measured then: the tray's own, else
 * its box's, its incubator's, the room's. Where no probe of a container
 * measured but a thermometer there remembered its lowest and highest, these tell. Between readings at most three hours apart it runs straight. What
 * nothing measured is filled with the set-point and what the place did against it at that time of day, and
 * said so in {@link #spans}. Only good readings count, each less its probe's offset; nothing after the given
 * instant is used. A record with no reading, place or set-point at all gives the reference temperature.
 *
 * <p>Immutable.
 */
public final class LivedTemperature {
    private static final int MIN_MEASURED_QUARTERS = QuarterHour.PER_DAY / 2;

    private final Ramp[] ramps;
    private final List<LivedSpan> spans;
    private final Instant from;
    private final Instant until;
    private final Nominal lastNominal;
    private final Residuals lastResiduals;

    LivedTemperature(
            List<LivedPiece> pieces, Instant from, Instant until, Nominal lastNominal, Residuals lastResiduals) {
        this.ramps = pieces.stream().map(LivedPiece::ramp).toArray(Ramp[]::new);
        this.spans = spansOf(pieces);
        this.from = from;
        this.until = until;
        this.lastNominal = lastNominal;
        this.lastResiduals = lastResiduals;
    }

    /** The temperature lived in a tray up to an instant, from the record as far as it was known then. */
    public static LivedTemperature of(BroodRecord record, String tray, Instant until) {
        return new TrayClimates(record, until).of(tray);
    }

    /** The origin of the animals' age, where this begins. */
    public Instant from() {
        return from;
    }

    /** Where this ends: the instant asked for, or the origin if that is later. */
    public Instant until() {
        return until;
    }

    /** Where the temperature comes from, span after span without a hole; empty if no time has passed. */
    public List<LivedSpan> spans() {
        return spans;
    }

    /**
     * The share of the whole time of which nothing was measured, neither by a probe nor by a thermometer that
     * remembers its lowest and highest; 0 if no time has passed.
     */
    public double gapFraction() {
        double days = 0;
        double unmeasuredDays = 0;
        for (LivedSpan span : spans) {
            days += span.days();
            unmeasuredDays += span.source().isGap() ? span.days() : 0;
        }
        return days > 0 ? unmeasuredDays / days : 0;
    }

    /** The set-point around the animals at the end, or the reference temperature where none is in force. */
    public double nominalCelsius() {
        return lastNominal.celsius();
    }

    /**
     * How the place the animals are in at the end kept its set-point: the last whole UTC days, oldest first,
     * each as 96 quarter-hour means of (temperature − nominal) in K. Days measured for less than half are
     * left out, what is missing in the others is filled by habit.
     */
    public List<double[]> residualDays(int atMostDays) {
        List<double[]> days = new ArrayList<>();
        long endOfLastDay = Math.floorDiv(QuarterHour.containing(until.toEpochMilli()), QuarterHour.PER_DAY);
        for (long day = endOfLastDay - atMostDays; day < endOfLastDay; day++) {
            if (measuredQuarters(day) >= MIN_MEASURED_QUARTERS) {
                days.add(residualDay(day));
            }
        }
        return days;
    }

    /** All of it, end to end; shared, not to be changed. Whence each came the spans tell: there are thousands of ramps. */
    Ramp[] ramps() {
        return ramps;
    }

    private long measuredQuarters(long day) {
        long measured = 0;
        for (int i = 0; i < QuarterHour.PER_DAY; i++) {
            measured += lastResiduals.isMeasured(day * QuarterHour.PER_DAY + i) ? 1 : 0;
        }
        return measured;
    }

    private double[] residualDay(long day) {
        double[] residuals = new double[QuarterHour.PER_DAY];
        for (int i = 0; i < residuals.length; i++) {
            residuals[i] = lastResiduals.measuredOrExpectedCelsius(day * QuarterHour.PER_DAY + i);
        }
        return residuals;
    }

    private static List<LivedSpan> spansOf(List<LivedPiece> pieces) {
        List<LivedSpan> spans = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= pieces.size(); i++) {
            if (i == pieces.size() || !pieces.get(i).hasSourceOf(pieces.get(start))) {
                spans.add(new LivedSpan(
                        Instant.ofEpochMilli(pieces.get(start).ramp().fromMillis()),
                        Instant.ofEpochMilli(pieces.get(i - 1).ramp().toMillis()),
                        pieces.get(start).source(),
                        pieces.get(start).sdCelsius()));
                start = i;
            }
        }
        return List.copyOf(spans);
    }
}
