package org.moultwright.store.reading;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.moultwright.domain.Reading;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.RollUp;
import org.moultwright.domain.RollUpLevel;
import org.moultwright.store.sql.Transactions;
import org.moultwright.workflow.ProbeIdentity;
import org.moultwright.workflow.ReadingLog;

/** The readings of all probes in H2. */
public final class H2ReadingLog implements ReadingLog {
    /** Ends of time that still have room for an hour on either side. */
    private static final Instant EARLIEST = Instant.parse("-9999-01-01T00:00:00Z");

    private static final Instant LATEST = Instant.parse("9999-01-01T00:00:00Z");

    private final Transactions transactions;
    private final Arrivals arrivals;

    public H2ReadingLog(Transactions transactions, Arrivals arrivals) {
        this.transactions = transactions;
        this.arrivals = arrivals;
    }

    @Override
    public List<Logged> append(String probe, List<Logged> readings) {
        if (readings.isEmpty()) {
            return readings;
        }
        try (Arrivals.Batch batch = arrivals.begin()) {
            return transactions.write(handle -> batch.append(handle, probe, readings));
        }
    }

    @Override
    public void identified(String probe, ProbeIdentity sensor, Instant from) {
        transactions.write(handle -> ProbeSensors.write(handle, probe, sensor, from));
    }

    @Override
    public long mark() {
        return arrivals.mark();
    }

    @Override
    public Optional<Instant> earliestSince(String probe, long mark) {
        return arrivals.earliestSince(probe, mark);
    }

    @Override
    public ReadingSeries series(String probe, Instant from, Instant to) {
        Instant start = within(from);
        Instant end = within(to);
        return transactions.read(handle -> ProbeTable.find(handle, probe)
                .map(probeNo -> ReadingTables.series(handle, probeNo, start.toEpochMilli(), end.toEpochMilli()))
                .map(series -> series.between(start, end))
                .orElse(ReadingSeries.EMPTY));
    }

    @Override
    public void each(String probe, Instant from, Instant to, Consumer<ReadingSeries> action) {
        Instant start = within(from);
        Instant end = within(to);
        transactions.read(handle -> {
            ProbeTable.find(handle, probe)
                    .ifPresent(probeNo -> ReadingTables.each(
                            handle,
                            probeNo,
                            start.toEpochMilli(),
                            end.toEpochMilli(),
                            piece -> action.accept(piece.between(start, end))));
            return probe;
        });
    }

    @Override
    public ReadingSeries temperatures(String probe, Instant from, Instant to) {
        Instant start = within(from);
        Instant end = within(to);
        return transactions.read(handle -> ProbeTable.find(handle, probe)
                .map(probeNo -> ReadingTables.temperatures(handle, probeNo, start.toEpochMilli(), end.toEpochMilli()))
                .map(series -> series.between(start, end))
                .orElse(ReadingSeries.EMPTY));
    }

    @Override
    public List<RollUp> rollUps(String probe, RollUpLevel level, Instant from, Instant to) {
        Instant start = within(from);
        Instant end = within(to);
        return transactions.read(handle -> ProbeTable.find(handle, probe)
                .map(probeNo -> ReadingTables.rollUps(handle, probeNo, level, start.toEpochMilli(), end.toEpochMilli()))
                .orElse(List.of()));
    }

    @Override
    public Optional<Instant> earliest(String probe) {
        return transactions.read(handle -> ProbeTable.find(handle, probe)
                .flatMap(probeNo -> ReadingTables.earliestMillis(handle, probeNo))
                .map(Instant::ofEpochMilli));
    }

    @Override
    public Map<String, Reading> latest() {
        return transactions.read(handle -> {
            Map<String, Reading> latest = new TreeMap<>();
            ProbeTable.all(handle)
                    .forEach((code, probeNo) ->
                            ReadingTables.latest(handle, probeNo).ifPresent(reading -> latest.put(code, reading)));
            return latest;
        });
    }

    /** Rolls up what a store of before there were roll-ups holds, each probe whole or not at all. */
    public void rollUpMissing() {
        transactions
                .read(RollUpTable::missing)
                .forEach(probeNo -> transactions.write(handle -> {
                    ReadingTables.rollUpAnew(handle, probeNo);
                    return probeNo;
                }));
    }

    private static Instant within(Instant instant) {
        Instant notTooEarly = instant.isBefore(EARLIEST) ? EARLIEST : instant;
        return notTooEarly.isAfter(LATEST) ? LATEST : notTooEarly;
    }
}
