package org.moultwright.compute.climate;

import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * How far a container's measured temperature stood from its nominal one, by quarter-hour of UTC.
 *
 * <p>UTC, so that no day is 23 or 25 hours long; a keeper's clock change moves the daily habit by an hour
 * for the three days in which both sides of it are averaged.
 */
final class Residuals {
    private static final int NEARBY_DAYS = 3;

    private final Map<Long, Mean> byQuarter;
    private final Mean[] byQuarterOfDay = new Mean[QuarterHour.PER_DAY];
    private final Mean all = new Mean();
    private final LocalMeans nearBy;

    private Residuals(Map<Long, Mean> byQuarter) {
        this.byQuarter = byQuarter;
        Arrays.setAll(byQuarterOfDay, i -> new Mean());
        byQuarter.forEach((quarter, mean) -> {
            byQuarterOfDay[QuarterHour.ofDay(quarter)].add(mean.value(), 1);
            all.add(mean.value(), 1);
        });
        this.nearBy = new LocalMeans(byQuarter);
    }

    /** The residuals of the measured stretches whose nominal temperature is that of this container. */
    static Residuals of(String container, List<Stretch> stretches, Nominals nominals) {
        return new Residuals(QuarterHourMeans.of(container, stretches, nominals));
    }

    boolean isEmpty() {
        return byQuarter.isEmpty();
    }

    boolean isMeasured(long quarter) {
        return byQuarter.containsKey(quarter);
    }

    /** The residual measured in a quarter-hour, else the one to expect there. */
    double measuredOrExpectedCelsius(long quarter) {
        Mean measured = byQuarter.get(quarter);
        return measured != null ? measured.value() : expectedCelsius(quarter);
    }

    /**
     * The mean residual of the same quarter-hour within three days, else of all quarter-hours within one day, else
     * of the same on all days, else of all, else 0.
     */
    double expectedCelsius(long quarter) {
        Mean nearby = new Mean();
        for (int day = -NEARBY_DAYS; day <= NEARBY_DAYS; day++) {
            Mean mean = byQuarter.get(quarter + (long) day * QuarterHour.PER_DAY);
            if (mean != null) {
                nearby.add(mean.value(), 1);
            }
        }
        return nearby.ifAny()
                .orElseGet(() -> nearBy.within(quarter, QuarterHour.PER_DAY).orElseGet(() -> onAllDays(quarter)));
    }

    private double onAllDays(long quarter) {
        Mean sameQuarter = byQuarterOfDay[QuarterHour.ofDay(quarter)];
        return sameQuarter.ifAny().orElse(all.ifAny().orElse(0));
    }

    /** Standard deviation of all quarter-hours' residuals, 0 with none. */
    double sdCelsius() {
        double centre = all.ifAny().orElse(0);
        return Math.sqrt(byQuarter.values().stream()
                .mapToDouble(mean -> (mean.value() - centre) * (mean.value() - centre))
                .average()
                .orElse(0));
    }
}
