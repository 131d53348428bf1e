package org.moultwright.store.book;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.moultwright.domain.ProbeStay;
import org.moultwright.store.reading.Arrivals;
import org.moultwright.store.reading.BroughtReadings;
import org.moultwright.store.reading.ReadingIntake;
import org.moultwright.store.sql.Transactions;
import org.moultwright.workflow.BulkReadings;
import org.moultwright.workflow.ClimateWriting;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.ReadingSource;

/** Files of readings in H2: the readings, what brought them and where their probe stood, in one transaction. */
public final class H2ReadingFiles implements BulkReadings {
    private final Transactions transactions;
    private final Arrivals arrivals;
    private final DeedTable deeds = new DeedTable();
    private final WrittenClimate written = new WrittenClimate();

    /** @param arrivals is told of every reading taken in */
    public H2ReadingFiles(Transactions transactions, Arrivals arrivals) {
        this.transactions = transactions;
        this.arrivals = arrivals;
    }

    @Override
    public long takeIn(Deed.Summary summary, ReadingSource readings, Supplier<List<ProbeStay>> placings) {
        try (Arrivals.Batch batch = arrivals.begin()) {
            return transactions.write(handle -> {
                deeds.insert(handle, new DeedTable.Head(summary, Optional.empty()));
                BroughtReadings brought = new BroughtReadings(handle, summary.id());
                long added = ReadingIntake.takeIn(handle, batch.noting(readings), Optional.of(brought));
                List<ProbeStay> stays = placings.get();
                if (added == 0 && stays.isEmpty()) {
                    deeds.forget(handle, summary.id());
                }
                written.insert(handle, summary.id(), new ClimateWriting(List.of(), List.of(), stays));
                return added;
            });
        }
    }
}
