package org.moultwright.compute.climate;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Gathers measured stretches, in order of time, into the mean residual of each quarter-hour. */
final class QuarterHourMeans {
    private final String container;
    private final Nominals nominals;
    private final Map<Long, Mean> byQuarter = new HashMap<>();
    private long currentQuarter = Long.MIN_VALUE;
    private @Nullable Place currentPlace;
    private double currentNominalCelsius;
    private @Nullable Mean currentMean;

    private QuarterHourMeans(String container, Nominals nominals) {
        this.container = container;
        this.nominals = nominals;
    }

    /** The means of the stretches whose nominal temperature is that of this container, by quarter-hour. */
    static Map<Long, Mean> of(String container, List<Stretch> stretches, Nominals nominals) {
        QuarterHourMeans means = new QuarterHourMeans(container, nominals);
        for (Stretch stretch : stretches) {
            if (stretch instanceof Stretch.Measured measured) {
                means.gather(measured.piece().ramp(), measured.place());
            }
        }
        return means.byQuarter;
    }

    private void gather(Ramp ramp, Place place) {
        long from = ramp.fromMillis();
        while (from < ramp.toMillis()) {
            long quarter = QuarterHour.containing(from);
            long to = Math.min(QuarterHour.startMillis(quarter + 1), ramp.toMillis());
            if (quarter != currentQuarter || !place.equals(currentPlace)) {
                moveTo(quarter, place);
            }
            if (currentMean != null) {
                currentMean.add(ramp.between(from, to).meanCelsius() - currentNominalCelsius, (double) (to - from));
            }
            from = to;
        }
    }

    private void moveTo(long quarter, Place place) {
        Nominal nominal = nominals.at(place, QuarterHour.middleMillis(quarter));
        currentQuarter = quarter;
        currentPlace = place;
        currentNominalCelsius = nominal.celsius();
        currentMean =
                nominal.container().equals(container) ? byQuarter.computeIfAbsent(quarter, unseen -> new Mean()) : null;
    }
}
