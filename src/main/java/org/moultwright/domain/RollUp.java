package org.moultwright.domain;

/**
 * What a stretch of readings comes to: of the good ones how many, the lowest, highest, first, last and their sum;
 * of the others only how many.
 *
 * <p>Adding up roll-ups of parts gives that of the whole, to the last bit: sums are whole millionths of a degree.
 *
 * @param startMillis where its stretch begins
 * @param good how many good readings; without any, their instants are {@code startMillis} and their values NaN
 * @param bad how many that are not
 * @param sumMicroCelsius sum of the good temperatures, each rounded to a millionth of a degree
 */
public record RollUp(
        long startMillis,
        int good,
        int bad,
        long firstMillis,
        double firstCelsius,
        long lastMillis,
        double lastCelsius,
        double lowCelsius,
        double highCelsius,
        long sumMicroCelsius) {
    private static final double MICRO = 1e6;

    /** The readings of a series from one index on and before another. */
    static RollUp of(long startMillis, ReadingSeries readings, int begin, int end) {
        int good = 0;
        int first = begin;
        int last = begin;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        long sum = 0;
        for (int i = begin; i < end; i++) {
            if (readings.quality(i) == Quality.GOOD) {
                double celsius = readings.temperatureCelsius(i);
                first = good == 0 ? i : first;
                last = i;
                good++;
                low = Math.min(low, celsius);
                high = Math.max(high, celsius);
                sum += Math.round(celsius * MICRO);
            }
        }
        int bad = end - begin - good;
        return good == 0
                ? new RollUp(
                        startMillis,
                        0,
                        bad,
                        startMillis,
                        Double.NaN,
                        startMillis,
                        Double.NaN,
                        Double.NaN,
                        Double.NaN,
                        0)
                : new RollUp(
                        startMillis,
                        good,
                        bad,
                        readings.epochMillis(first),
                        readings.temperatureCelsius(first),
                        readings.epochMillis(last),
                        readings.temperatureCelsius(last),
                        low,
                        high,
                        sum);
    }

    /** This and others' readings as one stretch that begins where this does; their instants may lie in any order. */
    public RollUp with(RollUp other) {
        if (good == 0 || other.good == 0) {
            RollUp measured = good == 0 ? other : this;
            return measured.counted(startMillis, bad + other.bad);
        }
        boolean startsHere = firstMillis <= other.firstMillis;
        boolean endsHere = lastMillis >= other.lastMillis;
        return new RollUp(
                startMillis,
                good + other.good,
                bad + other.bad,
                startsHere ? firstMillis : other.firstMillis,
                startsHere ? firstCelsius : other.firstCelsius,
                endsHere ? lastMillis : other.lastMillis,
                endsHere ? lastCelsius : other.lastCelsius,
                Math.min(lowCelsius, other.lowCelsius),
                Math.max(highCelsius, other.highCelsius),
                sumMicroCelsius + other.sumMicroCelsius);
    }

    /** The same readings, as an instrument with a known error should have shown them. */
    public RollUp corrected(Correction correction) {
        return good == 0 || correction.isNothing()
                ? this
                : new RollUp(
                        startMillis,
                        good,
                        bad,
                        firstMillis,
                        correction.correct(firstCelsius),
                        lastMillis,
                        correction.correct(lastCelsius),
                        correction.correct(lowCelsius),
                        correction.correct(highCelsius),
                        Math.round(correction.correct(meanCelsius()) * good * MICRO));
    }

    /** Mean of the good temperatures, NaN without any. */
    public double meanCelsius() {
        return good == 0 ? Double.NaN : sumMicroCelsius / MICRO / good;
    }

    /** The same readings as part of a stretch that begins elsewhere. */
    RollUp startingAt(long otherStartMillis) {
        return counted(otherStartMillis, bad);
    }

    private RollUp counted(long start, int bads) {
        return new RollUp(
                start,
                good,
                bads,
                good == 0 ? start : firstMillis,
                firstCelsius,
                good == 0 ? start : lastMillis,
                lastCelsius,
                lowCelsius,
                highCelsius,
                sumMicroCelsius);
    }
}
