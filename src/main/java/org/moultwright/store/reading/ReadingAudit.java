package org.moultwright.store.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.store.sql.Problem;
import org.moultwright.store.sql.RowReader;

/**
 * Reads every reading: each packed hour unpacks to as many readings as it says, all within the hour, stands in no
 * rows besides, and comes to the roll-ups kept of it.
 *
 * @param readings how many there are
 * @param problems what does not hold
 */
public record ReadingAudit(long readings, List<Problem> problems) {

    public static ReadingAudit of(Handle handle) {
        List<Problem> problems = new ArrayList<>();
        long readings = 0;
        for (Map.Entry<String, Integer> probe : ProbeTable.all(handle).entrySet()) {
            readings += hours(handle, probe.getKey(), probe.getValue(), problems);
            readings += rows(handle, probe.getKey(), probe.getValue(), problems);
        }
        return new ReadingAudit(readings, List.copyOf(problems));
    }

    private static long hours(Handle handle, String code, int probeNo, List<Problem> problems) {
        RollUpAudit rollUps = new RollUpAudit(handle, code, probeNo);
        RowReader<Long> reader = row -> {
            long hourNo = row.number("hour_no");
            try {
                HourOfReadings hour = ReadingHourTable.hour(row.bytes("series"), row.optionalBytes("raw_lines"));
                requireHour(hour.series(), hourNo, row.count("readings"));
                rollUps.compare(hourNo, hour.series());
            } catch (IllegalArgumentException e) {
                problems.add(new Problem(
                        "reading_hour", "probe " + code + ", hour " + hourNo, String.valueOf(e.getMessage())));
            }
            return (long) row.count("readings");
        };
        AtomicLong readings = new AtomicLong();
        ReadingHourTable.forEach(
                handle, probeNo, Long.MIN_VALUE, Long.MAX_VALUE, reader, (hourNo, count) -> readings.addAndGet(count));
        problems.addAll(rollUps.problems());
        return readings.get();
    }

    private static void requireHour(ReadingSeries series, long hourNo, int size) {
        if (series.size() != size) {
            throw new IllegalArgumentException("must hold " + size + " readings, found " + series.size());
        }
        boolean within = Hours.of(series.epochMillis(0)) == hourNo && Hours.of(series.epochMillis(size - 1)) == hourNo;
        if (!within) {
            throw new IllegalArgumentException("must hold readings of its own hour only");
        }
    }

    private static long rows(Handle handle, String code, int probeNo, List<Problem> problems) {
        long[] count = {0};
        try {
            ReadingRowTable.between(handle, probeNo, Long.MIN_VALUE, Long.MAX_VALUE)
                    .forEach(row -> {
                        long hourNo = Hours.of(row.reading().takenAt().toEpochMilli());
                        count[0]++;
                        if (ReadingHourTable.exists(handle, probeNo, hourNo)) {
                            problems.add(new Problem(
                                    "reading_row",
                                    "probe " + code + ", hour " + hourNo,
                                    "an hour stands in one table only"));
                        }
                    });
        } catch (IllegalArgumentException e) {
            problems.add(new Problem("reading_row", "probe " + code, String.valueOf(e.getMessage())));
        }
        return count[0];
    }
}
