package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.moultwright.domain.Quality;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.RollUp;
import org.moultwright.domain.RollUpLevel;

/**
 * A probe's readings of whole days, no more than warm-days need: a day of many readings is told by the mean of each
 * quarter of an hour, a day of few as it was read.
 *
 * <p>A mean stands in the middle between the first and last good reading it is of, without humidity. Where the probe was
 * silent its last reading before and its first after are told as well, each when it was taken, and so are the first and
 * the last of a day.
 */
final class ThinnedReadings {
    /** Of so many on a day, four in a quarter of an hour, means would save little. */
    private static final int FEW_ON_A_DAY = 4 * 96;

    private static final long SILENCE_MILLIS = Duration.ofHours(1).toMillis();

    private final ReadingLog log;
    private final String probe;
    private final ReadingSeries.Builder thinned = new ReadingSeries.Builder();
    private Instant rawFrom = Instant.MAX;

    private ThinnedReadings(ReadingLog log, String probe) {
        this.log = log;
        this.probe = probe;
    }

    /** Those at or after one midnight of UTC and before another. */
    static ReadingSeries of(ReadingLog log, String probe, Instant from, Instant to) {
        List<RollUp> quarters = log.rollUps(probe, RollUpLevel.QUARTER_HOUR, from, to);
        ThinnedReadings readings = new ThinnedReadings(log, probe);
        List<RollUp> day = new ArrayList<>();
        for (RollUp quarter : quarters) {
            if (!day.isEmpty() && dayOf(day.get(0)) != dayOf(quarter)) {
                readings.add(day);
                day.clear();
            }
            day.add(quarter);
        }
        readings.add(day);
        readings.readTo(to);
        return readings.thinned.build();
    }

    private static long dayOf(RollUp quarter) {
        return RollUpLevel.DAY.startMillis(quarter.startMillis());
    }

    private void add(List<RollUp> day) {
        if (day.isEmpty()) {
            return;
        }
        Instant start = Instant.ofEpochMilli(dayOf(day.get(0)));
        if (!isDense(day)) {
            rawFrom = rawFrom.isAfter(start) ? start : rawFrom;
            return;
        }
        readTo(start);
        List<RollUp> good = day.stream().filter(quarter -> quarter.good() > 0).toList();
        for (int i = 0; i < good.size(); i++) {
            RollUp quarter = good.get(i);
            boolean isFirst = i == 0 || isSilent(good.get(i - 1), quarter);
            boolean isLast = i == good.size() - 1 || isSilent(quarter, good.get(i + 1));
            add(quarter, isFirst, isLast);
        }
    }

    private void add(RollUp quarter, boolean isFirst, boolean isLast) {
        if (isFirst) {
            add(quarter.firstMillis(), quarter.firstCelsius());
        }
        add((quarter.firstMillis() + quarter.lastMillis()) / 2, quarter.meanCelsius());
        if (isLast) {
            add(quarter.lastMillis(), quarter.lastCelsius());
        }
    }

    private void add(long epochMillis, double celsius) {
        thinned.add(epochMillis, celsius, Double.NaN, Quality.GOOD);
    }

    /** Adds the readings themselves from the last day of few on, if there is one that was not added yet. */
    private void readTo(Instant end) {
        if (rawFrom.isBefore(end)) {
            log.series(probe, rawFrom, end).forEach(thinned::add);
        }
        rawFrom = Instant.MAX;
    }

    private static boolean isDense(List<RollUp> day) {
        return day.stream().mapToLong(quarter -> quarter.good() + quarter.bad()).sum() > FEW_ON_A_DAY;
    }

    private static boolean isSilent(RollUp earlier, RollUp later) {
        return later.firstMillis() - earlier.lastMillis() > SILENCE_MILLIS;
    }
}
