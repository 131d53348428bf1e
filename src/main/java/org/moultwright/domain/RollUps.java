package org.moultwright.domain;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** Rolls readings up, and finer roll-ups into coarser ones. Stretches without any reading have no roll-up. */
public final class RollUps {
    private RollUps() {}

    /** Those of a level, in order of time. */
    public static List<RollUp> of(ReadingSeries readings, RollUpLevel level) {
        List<RollUp> rolled = new ArrayList<>();
        int begin = 0;
        while (begin < readings.size()) {
            long start = level.startMillis(readings.epochMillis(begin));
            int end = begin;
            while (end < readings.size() && readings.epochMillis(end) < start + level.millis()) {
                end++;
            }
            rolled.add(RollUp.of(start, readings, begin, end));
            begin = end;
        }
        return rolled;
    }

    /** Each reading for itself. */
    public static List<RollUp> each(ReadingSeries readings) {
        List<RollUp> each = new ArrayList<>(readings.size());
        for (int i = 0; i < readings.size(); i++) {
            each.add(RollUp.of(readings.epochMillis(i), readings, i, i + 1));
        }
        return each;
    }

    /**
     * Readings that look as the rolled up ones do: the first, lowest, highest and last of each, the middle two spread
     * between the others.
     */
    public static ReadingSeries outline(List<RollUp> rollUps) {
        ReadingSeries.Builder outline = new ReadingSeries.Builder();
        for (RollUp rollUp : rollUps) {
            if (rollUp.good() > 0) {
                long third = (rollUp.lastMillis() - rollUp.firstMillis()) / 3;
                add(outline, rollUp.firstMillis(), rollUp.firstCelsius());
                if (third > 0) {
                    add(outline, rollUp.firstMillis() + third, rollUp.lowCelsius());
                    add(outline, rollUp.lastMillis() - third, rollUp.highCelsius());
                    add(outline, rollUp.lastMillis(), rollUp.lastCelsius());
                }
            }
        }
        return outline.build();
    }

    private static void add(ReadingSeries.Builder outline, long millis, double celsius) {
        outline.add(millis, celsius, Double.NaN, Quality.GOOD);
    }

    /** Those of a coarser level, from finer ones in order of time. */
    public static List<RollUp> coarser(Iterable<RollUp> finer, RollUpLevel level) {
        List<RollUp> rolled = new ArrayList<>();
        finer.forEach(part -> add(rolled, part.startingAt(level.startMillis(part.startMillis()))));
        return rolled;
    }

    /** Two lists of one level as one, in order of time; those of one stretch are added up. */
    public static List<RollUp> joined(List<RollUp> some, List<RollUp> others) {
        TreeMap<Long, RollUp> byStart = new TreeMap<>();
        some.forEach(rollUp -> byStart.merge(rollUp.startMillis(), rollUp, RollUp::with));
        others.forEach(rollUp -> byStart.merge(rollUp.startMillis(), rollUp, RollUp::with));
        return new ArrayList<>(byStart.values());
    }

    private static void add(List<RollUp> rolled, RollUp next) {
        int last = rolled.size() - 1;
        if (last >= 0 && rolled.get(last).startMillis() == next.startMillis()) {
            rolled.set(last, rolled.get(last).with(next));
        } else {
            rolled.add(next);
        }
    }
}
