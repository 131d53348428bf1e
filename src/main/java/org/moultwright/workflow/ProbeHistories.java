package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.ReadingSeries;

/**
 * The history of every probe that measures for some brood, read from the log once for all of them: the last
 * {@link #RECENT} as it was read, the days before it thinned.
 *
 * <p>What was read stays in memory; asked again, only what the log has kept since is read, from its earliest
 * instant on. So an answer is always what the log would give, whenever and in whatever order readings came.
 * Not safe to share.
 */
final class ProbeHistories {
    /** So long a brood's looks and a keeper's questions mostly reach back. */
    static final Duration RECENT = Duration.ofDays(14);

    private static final Instant END_OF_TIME = Instant.parse("9999-01-01T00:00:00Z");

    private final ReadingLog log;
    private final Map<String, Remembered> remembered = new HashMap<>();

    ProbeHistories(ReadingLog log) {
        this.log = log;
    }

    /** The readings up to and including an instant of every probe that measured for a brood, by probe code. */
    Map<String, ReadingSeries> of(BroodRecord record, Instant until) {
        Map<String, ReadingSeries> byProbe = new HashMap<>();
        for (ProbeStay stay : record.probeStays()) {
            byProbe.computeIfAbsent(stay.probe(), probe -> whole(probe, until).until(until));
        }
        return byProbe;
    }

    private ReadingSeries whole(String probe, Instant until) {
        Instant recent = midnight(until.minus(RECENT));
        // Asked before reading: what is kept in between is then read once more, never missed.
        long mark = log.mark();
        ReadingSeries series = Optional.ofNullable(remembered.get(probe))
                .filter(known -> !recent.isBefore(known.recent()))
                .map(known -> upToDate(probe, known, recent))
                .orElseGet(() -> from(probe, Instant.EPOCH, recent));
        remembered.put(probe, new Remembered(mark, recent, series));
        return series;
    }

    private ReadingSeries upToDate(String probe, Remembered known, Instant recent) {
        ReadingSeries series = known.series();
        Optional<Instant> changed = log.earliestSince(probe, known.mark());
        if (changed.filter(known.recent()::isAfter).isPresent()) {
            Instant day = midnight(changed.get());
            return series.replacedFrom(day, from(probe, day, recent));
        }
        ReadingSeries grown = changed.map(from -> series.replacedFrom(from, log.series(probe, from, END_OF_TIME)))
                .orElse(series);
        return known.recent().equals(recent)
                ? grown
                : grown.replacedFrom(
                        known.recent(),
                        ThinnedReadings.of(log, probe, known.recent(), recent)
                                .replacedFrom(recent, grown.between(recent, END_OF_TIME)));
    }

    private ReadingSeries from(String probe, Instant midnight, Instant recent) {
        return ThinnedReadings.of(log, probe, midnight, recent)
                .replacedFrom(recent, log.series(probe, recent, END_OF_TIME));
    }

    private static Instant midnight(Instant instant) {
        return instant.truncatedTo(ChronoUnit.DAYS);
    }

    /**
     * What was read of a probe, and the log's mark before it was read.
     *
     * @param recent from when on it is as it was read
     */
    private record Remembered(long mark, Instant recent, ReadingSeries series) {}
}
