package org.moultwright.compute.forecast;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.moultwright.compute.stage.Chance;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Span;

/**
 * An invented incubator hour by hour, over one brood: a display and a probe that are off by their keeper's
 * constants, a daily swing, slow wandering, set-points that change, and readings that stop for a while.
 */
final class SimulatedRoom {
    static final int DAYS = 140;
    private static final int HOURS = DAYS * 24;

    private final double[] setPointByHour = new double[HOURS];
    private final double[] trueByHour = new double[HOURS];
    private final double probeOffset;
    private final int gapFromHour;
    private final int gapToHour;

    SimulatedRoom(SimulatedHusbandry husbandry, Chance chance) {
        double swing = 0.2 + 0.5 * chance.uniform();
        double base = husbandry.usualCelsius() + chance.uniform() - 0.5;
        int firstChange = 24 * (25 + chance.below(20));
        int secondChange = firstChange + 24 * (10 + chance.below(25));
        double firstStep = Math.round(2 * (chance.uniform() - 0.5) * 2) / 2.0;
        double wandering = 0;
        for (int hour = 0; hour < HOURS; hour++) {
            wandering = 0.97 * wandering + 0.08 * chance.normal();
            boolean isChanged = hour >= firstChange && hour < secondChange;
            setPointByHour[hour] = Math.round(2 * base) / 2.0 + (isChanged ? firstStep : 0);
            trueByHour[hour] = setPointByHour[hour]
                    + husbandry.displayOffsetCelsius()
                    + swing * Math.sin(hour * Math.PI / 12)
                    + wandering;
        }
        this.probeOffset = husbandry.probeOffsetCelsius();
        this.gapFromHour = 24 * (15 + chance.below(60));
        this.gapToHour = gapFromHour + (chance.uniform() < 0.3 ? 24 + chance.below(48) : 0);
    }

    double trueCelsius(int hour) {
        return trueByHour[Math.min(hour, HOURS - 1)];
    }

    double setPointCelsius(int hour) {
        return setPointByHour[Math.min(hour, HOURS - 1)];
    }

    ReadingSeries readings() {
        ReadingSeries.Builder series = new ReadingSeries.Builder();
        for (int hour = 0; hour < HOURS; hour++) {
            if (hour < gapFromHour || hour >= gapToHour) {
                series.add(
                        TriedBrood.at(hour / 24.0).toEpochMilli(),
                        trueByHour[hour] + probeOffset,
                        Double.NaN,
                        Quality.GOOD);
            }
        }
        return series.build();
    }

    List<SetPoint> setPoints() {
        List<SetPoint> spans = new ArrayList<>();
        int from = 0;
        for (int hour = 1; hour <= HOURS; hour++) {
            if (hour == HOURS || setPointByHour[hour] != setPointByHour[from]) {
                Optional<Instant> to = hour == HOURS ? Optional.empty() : Optional.of(TriedBrood.at(hour / 24.0));
                spans.add(new SetPoint(
                        "incubator", new Span(TriedBrood.at(from / 24.0), to), setPointByHour[from], Double.NaN));
                from = hour;
            }
        }
        return spans;
    }

    ProbeStay probeStay() {
        return new ProbeStay("probe", "incubator", new Span(TriedBrood.START, Optional.empty()), 0, 0.3);
    }
}
