package org.moultwright.compute.climate;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How far a container's measured temperature stood from its nominal one, by quarter-hour of UTC.
 *
 * <p>UTC, so that no day is 23 or 25 hours long; a keeper's clock change moves the daily habit by an hour
 * for the three days in which both sides of it are averaged.
 */
final class Residuals {
    private static final int NEARBY_DAYS = 3;

    private final Map<Long, Mean> byQuarter = new HashMap<>();
    private final Mean[] byQuarterOfDay = new Mean[QuarterHour.PER_DAY];
    private final Mean all = new Mean();

    private Residuals() {
        Arrays.setAll(byQuarterOfDay, i -> new Mean());
    }

    /** The residuals of the measured stretches whose nominal temperature is that of this container. */
    static Residuals of(String container, List<Stretch> stretches, Nominals nominals) {
        Residuals residuals = new Residuals();
        for (Stretch stretch : stretches) {
            if (stretch instanceof Stretch.Measured measured) {
                residuals.gather(container, measured, nominals);
            }
        }
        residuals.byQuarter.forEach((quarter, mean) -> {
            residuals.byQuarterOfDay[QuarterHour.ofDay(quarter)].add(mean.value(), 1);
            residuals.all.add(mean.value(), 1);
        });
        return residuals;
    }

    private void gather(String container, Stretch.Measured measured, Nominals nominals) {
        Ramp ramp = measured.ramp();
        long from = ramp.fromMillis();
        while (from < ramp.toMillis()) {
            long quarter = QuarterHour.containing(from);
            long to = Math.min(QuarterHour.startMillis(quarter + 1), ramp.toMillis());
            Nominal nominal = nominals.at(measured.place(), QuarterHour.middleMillis(quarter));
            if (nominal.container().equals(container)) {
                byQuarter
                        .computeIfAbsent(quarter, unseen -> new Mean())
                        .add(ramp.between(from, to).meanCelsius() - nominal.celsius(), (double) (to - from));
            }
            from = to;
        }
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
     * The mean residual of the same quarter-hour within three days, else on all days, else of all
     * quarter-hours, else 0.
     */
    double expectedCelsius(long quarter) {
        Mean nearby = new Mean();
        for (int day = -NEARBY_DAYS; day <= NEARBY_DAYS; day++) {
            Mean mean = byQuarter.get(quarter + (long) day * QuarterHour.PER_DAY);
            if (mean != null) {
                nearby.add(mean.value(), 1);
            }
        }
        Mean sameQuarter = byQuarterOfDay[QuarterHour.ofDay(quarter)];
        return nearby.ifAny().orElse(sameQuarter.ifAny().orElse(all.ifAny().orElse(0)));
    }

    /** Standard deviation of all quarter-hours' residuals, 0 with none. */
    double sdCelsius() {
        double centre = all.ifAny().orElse(0);
        return Math.sqrt(byQuarter.values().stream()
                .mapToDouble(mean -> (mean.value() - centre) * (mean.value() - centre))
                .average()
                .orElse(0));
    }

    private static final class Mean {
        private double weightedSum;
        private double weight;

        void add(double value, double valueWeight) {
            weightedSum += value * valueWeight;
            weight += valueWeight;
        }

        double value() {
            return weightedSum / weight;
        }

        OptionalDouble ifAny() {
            return weight > 0 ? OptionalDouble.of(value()) : OptionalDouble.empty();
        }
    }
}
