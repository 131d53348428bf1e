package org.moultwright.compute.forecast;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.moultwright.compute.stage.TrayHistory;

/**
 * Tells bursts of deaths, such as mould makes, from every day's: more dead in a tray between two counts than one in two
 * thousand such times would have by the usual hazards and the brood's own frailty, which is found from what is left. All
 * within a few days of a burst is set aside with it, whatever it shows.
 */
final class BurstSense {
    private static final double RARE = 5e-4;

    /** Fewer are no burst, however rare (assumption). */
    private static final int LEAST_DEAD = 4;

    /** Mould goes on for so long (assumption). */
    private static final double BURST_WARM_DAYS = 5;

    /** Frailty is drawn to the usual as by so many dead. */
    private static final double FRAILTY_SHAPE = 4;

    private static final int ROUNDS = 4;

    private final List<Interval> intervals;
    private double frailty = 1;

    private BurstSense(List<Interval> intervals) {
        this.intervals = intervals;
    }

    /**
     * One tray between two whole counts.
     *
     * @param spans lived by the animals counted at the first, by stage
     * @param losses found until the second, it included
     * @param usualDead dead to expect of a usual brood
     */
    record Interval(String tray, List<TrayHistory.Exposure> spans, List<TrayHistory.Loss> losses, double usualDead) {
        double fromAge() {
            return spans.get(0).fromAge();
        }

        double toAge() {
            return spans.get(0).toAge();
        }

        int dead() {
            return losses.stream().mapToInt(TrayHistory.Loss::animals).sum();
        }

        boolean isNear(Interval other) {
            return tray.equals(other.tray)
                    && fromAge() < other.toAge() + BURST_WARM_DAYS
                    && other.fromAge() < toAge() + BURST_WARM_DAYS;
        }
    }

    static BurstSense of(List<TrayHistory> trays, double eggWarmDays) {
        List<Interval> intervals = new ArrayList<>();
        for (TrayHistory tray : trays) {
            Map<Double, List<TrayHistory.Exposure>> byStart = new LinkedHashMap<>();
            tray.exposures()
                    .forEach(span -> byStart.computeIfAbsent(span.fromAge(), unseen -> new ArrayList<>())
                            .add(span));
            byStart.values().forEach(spans -> intervals.add(interval(tray, spans, eggWarmDays)));
        }
        BurstSense sense = new BurstSense(intervals);
        for (int round = 0; round < ROUNDS; round++) {
            sense.frailty = frailty(sense.everyday());
        }
        return sense;
    }

    private static Interval interval(TrayHistory tray, List<TrayHistory.Exposure> spans, double eggWarmDays) {
        double from = spans.get(0).fromAge();
        double to = spans.get(0).toAge();
        return new Interval(
                tray.tray(),
                spans,
                tray.losses().stream()
                        .filter(loss -> loss.age() > from && loss.age() <= to)
                        .toList(),
                spans.stream()
                        .mapToDouble(span ->
                                span.animalWarmDays() * Mortality.usualHazard(LifeTable.part(span, eggWarmDays)))
                        .sum());
    }

    private static double frailty(List<Interval> everyday) {
        double dead = everyday.stream().mapToInt(Interval::dead).sum();
        double usual = everyday.stream().mapToDouble(Interval::usualDead).sum();
        return (FRAILTY_SHAPE + dead) / (FRAILTY_SHAPE + usual);
    }

    /** The times away from any burst. */
    List<Interval> everyday() {
        List<Interval> bursts = intervals.stream().filter(this::isBurst).toList();
        return intervals.stream()
                .filter(interval -> bursts.stream().noneMatch(interval::isNear))
                .toList();
    }

    /** How many bursts there were. */
    int bursts() {
        List<Interval> found = new ArrayList<>();
        intervals.stream()
                .filter(this::isBurst)
                .filter(interval -> found.isEmpty() || !interval.isNear(found.get(found.size() - 1)))
                .forEach(found::add);
        return found.size();
    }

    private boolean isBurst(Interval interval) {
        int dead = interval.dead();
        return dead >= LEAST_DEAD && chanceOfAsMany(dead, frailty * interval.usualDead()) < RARE;
    }

    /** The chance of at least so many by a Poisson law. */
    private static double chanceOfAsMany(int dead, double expected) {
        double term = Math.exp(-expected);
        double fewer = 0;
        for (int n = 0; n < dead; n++) {
            fewer += term;
            term *= expected / (n + 1);
        }
        return Math.max(0, 1 - fewer);
    }
}
