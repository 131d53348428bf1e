package org.moultwright.boot.command;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.Check;
import org.moultwright.domain.Extremes;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.Pot;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.RunUpEvent;

/** The instant of the last row of any file of a brood. */
final class LastRow {
    private LastRow() {}

    /** The last instant anything was written or measured; the laying or 1970 where nothing was. */
    static Instant of(BroodRecord record) {
        Stream<Instant> readings = record.readings().values().stream()
                .filter(series -> !series.isEmpty())
                .map(LastRow::last);
        return Stream.of(
                        readings,
                        times(record.ledger().entries(), LedgerEntry::at),
                        times(record.checks(), Check::at),
                        times(record.mould(), MouldNote::at),
                        times(record.care(), CareNote::at),
                        times(record.pots(), Pot::potted),
                        times(record.runUp(), RunUpEvent::at),
                        times(record.extremes(), Extremes::to))
                .flatMap(Function.identity())
                .max(Comparator.naturalOrder())
                .orElseGet(
                        () -> record.brood().laid().map(laid -> laid.latest()).orElse(Instant.EPOCH));
    }

    private static Instant last(ReadingSeries series) {
        return Instant.ofEpochMilli(series.epochMillis(series.size() - 1));
    }

    private static <T> Stream<Instant> times(List<T> rows, Function<T, Instant> time) {
        return rows.stream().map(time);
    }
}
