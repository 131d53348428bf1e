package org.moultwright.compute.climate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Fills what was not measured: a hole of at most three hours by a straight line between its neighbours, a
 * longer one by the nominal temperature of the place and the residual to expect at each quarter-hour.
 */
final class GapFill {
    private final Nominals nominals;
    private final ResidualsOfPlaces residuals;

    GapFill(Nominals nominals, ResidualsOfPlaces residuals) {
        this.nominals = nominals;
        this.residuals = residuals;
    }

    /** The stretches end to end with every hole filled. */
    List<LivedPiece> fill(List<Stretch> stretches) {
        List<LivedPiece> pieces = new ArrayList<>();
        int i = 0;
        while (i < stretches.size()) {
            if (stretches.get(i) instanceof Stretch.Measured measured) {
                pieces.add(measured.piece());
                i++;
            } else {
                int end = endOfHole(stretches, i);
                fillHole(stretches, i, end, pieces);
                i = end;
            }
        }
        return pieces;
    }

    private static int endOfHole(List<Stretch> stretches, int start) {
        int end = start;
        while (end < stretches.size() && stretches.get(end) instanceof Stretch.Hole) {
            end++;
        }
        return end;
    }

    private void fillHole(List<Stretch> stretches, int start, int end, List<LivedPiece> into) {
        long from = stretches.get(start).fromMillis();
        long to = stretches.get(end - 1).toMillis();
        boolean hasNeighbour = start > 0 || end < stretches.size();
        if (hasNeighbour && to - from <= MeasuredTrack.LONGEST_BRIDGE_MILLIS) {
            into.add(bridge(stretches, start, end, from, to));
        } else {
            stretches.subList(start, end).forEach(hole -> fillByHabit((Stretch.Hole) hole, into));
        }
    }

    /** A straight line between the neighbours, or level beside the only one. */
    private static LivedPiece bridge(List<Stretch> stretches, int start, int end, long from, long to) {
        boolean isFirst = start == 0;
        boolean isLast = end == stretches.size();
        LivedPiece before = ((Stretch.Measured) stretches.get(isFirst ? end : start - 1)).piece();
        LivedPiece after = ((Stretch.Measured) stretches.get(isLast ? start - 1 : end)).piece();
        double startCelsius =
                isFirst ? after.ramp().startCelsius() : before.ramp().endCelsius();
        double endCelsius = isLast ? before.ramp().endCelsius() : after.ramp().startCelsius();
        return before.along(new Ramp(from, to, startCelsius, endCelsius));
    }

    private void fillByHabit(Stretch.Hole hole, List<LivedPiece> into) {
        // A hole has thousands of quarters and hardly more than one source.
        Map<TemperatureSource, LivedPiece> oneOfEach = new HashMap<>();
        long from = hole.fromMillis();
        while (from < hole.toMillis()) {
            long quarter = QuarterHour.containing(from);
            long to = Math.min(QuarterHour.startMillis(quarter + 1), hole.toMillis());
            Nominal nominal = nominals.at(hole.place(), QuarterHour.middleMillis(quarter));
            Residuals habit = residuals.of(hole.place(), nominal.container());
            Ramp level = Ramp.level(from, to, nominal.celsius() + habit.expectedCelsius(quarter));
            into.add(oneOfEach
                    .computeIfAbsent(
                            sourceOf(nominal, habit),
                            source -> new LivedPiece(level, source, Uncertainty.of(source, habit, hole.place())))
                    .along(level));
            from = to;
        }
    }

    private static TemperatureSource sourceOf(Nominal nominal, Residuals habit) {
        if (!habit.isEmpty()) {
            return new TemperatureSource.Habit(nominal.container());
        }
        return nominal.isSet()
                ? new TemperatureSource.SetPointAlone(nominal.container())
                : new TemperatureSource.Reference();
    }
}
