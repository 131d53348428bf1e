package org.moultwright.compute.mould;

import java.time.Duration;
import java.time.Instant;
import org.moultwright.domain.Correction;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;

/**
 * How far the air of one stretch of time favoured mould, starting from a clean surface, so that stretches of
 * one length can be compared.
 *
 * <p>A reading stands until the next one, an hour at the most; what was not measured adds nothing and is told.
 *
 * @param least the index if the humidity reads as much too high as it may
 * @param likely the index
 * @param most the index if it reads as much too low
 * @param measuredShare the share of the stretch that was measured, within [0, 1]
 */
public record MouldExposure(MouldIndex least, MouldIndex likely, MouldIndex most, double measuredShare) {
    private static final long LONGEST_STAND_MILLIS = Duration.ofHours(1).toMillis();
    private static final double MILLIS_PER_DAY = Duration.ofDays(1).toMillis();
    private static final double HOTTEST_CELSIUS = 50;
    private static final double ENOUGH_MEASURED = 0.5;

    /** One stretch beside another. */
    public enum Comparison {
        WETTER,
        ALIKE,
        DRIER,
        /** One of them was measured for less than half its time. */
        CANNOT_TELL
    }

    /**
     * The exposure from one instant to another.
     *
     * @param temperature what the indications of temperature need
     * @param humidity what the indications of humidity need
     * @param coverageFactor how many standard uncertainties of the humidity "as much as it may" is
     */
    public static MouldExposure over(
            ReadingSeries raw,
            Instant from,
            Instant to,
            Correction temperature,
            Correction humidity,
            double coverageFactor) {
        MouldIndex least = MouldIndex.NONE;
        MouldIndex likely = MouldIndex.NONE;
        MouldIndex most = MouldIndex.NONE;
        double measuredDays = 0;
        int end = raw.indexAtOrAfter(to);
        for (int i = raw.indexAtOrAfter(from); i < end; i++) {
            double celsius = temperature.correct(raw.temperatureCelsius(i));
            double indicated = raw.humidityPercent(i);
            if (raw.quality(i) != Quality.GOOD || Double.isNaN(indicated) || !(celsius > 0)) {
                continue;
            }
            long until = i + 1 < end ? raw.epochMillis(i + 1) : to.toEpochMilli();
            double days = Math.min(until - raw.epochMillis(i), LONGEST_STAND_MILLIS) / MILLIS_PER_DAY;
            double percent = humidity.correct(indicated);
            double reach = coverageFactor * humidity.sdAt(indicated);
            least = least.after(climate(celsius, percent - reach), days);
            likely = likely.after(climate(celsius, percent), days);
            most = most.after(climate(celsius, percent + reach), days);
            measuredDays += days;
        }
        double wholeDays = Duration.between(from, to).toMillis() / MILLIS_PER_DAY;
        return new MouldExposure(least, likely, most, wholeDays > 0 ? Math.min(measuredDays / wholeDays, 1) : 0);
    }

    /** This stretch beside an earlier one of the same length: told apart only beyond the humidity's uncertainty. */
    public Comparison against(MouldExposure earlier) {
        if (Math.min(measuredShare, earlier.measuredShare) < ENOUGH_MEASURED) {
            return Comparison.CANNOT_TELL;
        }
        if (least.value() > earlier.most.value()) {
            return Comparison.WETTER;
        }
        return most.value() < earlier.least.value() ? Comparison.DRIER : Comparison.ALIKE;
    }

    private static MouldClimate climate(double celsius, double percent) {
        return new MouldClimate(
                Math.min(celsius, HOTTEST_CELSIUS), Math.min(Math.max(percent, Double.MIN_NORMAL), 100));
    }
}
