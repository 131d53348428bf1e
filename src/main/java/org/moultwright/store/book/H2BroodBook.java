package org.moultwright.store.book;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.LessonNote;
import org.moultwright.domain.Require;
import org.moultwright.domain.Shelf;
import org.moultwright.store.reading.Arrivals;
import org.moultwright.store.reading.BroughtReadings;
import org.moultwright.store.reading.ReadingIntake;
import org.moultwright.store.sql.Transactions;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.ReadingSource;

/** The keeper's book of broods in H2. */
public final class H2BroodBook implements BroodBook {
    private final Transactions transactions;
    private final Arrivals arrivals;
    private final BookTables tables = new BookTables();

    /** @param arrivals is told of every reading taken in */
    public H2BroodBook(Transactions transactions, Arrivals arrivals) {
        this.transactions = transactions;
        this.arrivals = arrivals;
    }

    @Override
    public List<Brood> broods() {
        return transactions.read(tables.broods::all);
    }

    @Override
    public Optional<BroodRecord> find(String code) {
        return transactions.read(handle -> tables.broods.find(handle, code).map(brood -> tables.record(handle, brood)));
    }

    @Override
    public TakenIn takeIn(BroodRecord record, ReadingSource readings) {
        try (Arrivals.Batch batch = arrivals.begin()) {
            return transactions.write(handle -> {
                boolean isNew = addBrood(handle, record.brood());
                int rows = tables.takeIn(handle, record);
                tables.entries.ledger(handle, record.brood().code());
                long added = ReadingIntake.takeIn(handle, batch.noting(readings));
                return new TakenIn(rows + (isNew ? 1 : 0), added);
            });
        }
    }

    @Override
    public void keep(Deed deed) {
        try (Arrivals.Batch batch = arrivals.begin()) {
            transactions.write(handle -> {
                tables.sacs.begin(handle, deed);
                requireKeepable(handle, deed);
                tables.readings(handle, deed).forEach(read -> batch.add(read.probe(), read.reading()));
                tables.insert(handle, deed);
                deed.undoes().ifPresent(undone -> BroughtReadings.withdraw(handle, undone, batch));
                return deed;
            });
        }
    }

    private void requireKeepable(Handle handle, Deed deed) {
        Optional<String> brood = deed.summary().brood();
        brood.ifPresent(code ->
                Require.that(tables.broods.find(handle, code).isPresent(), "brood '" + code + "' is not in the book"));
        deed.undoes().ifPresent(id -> Require.that(tables.deeds.stands(handle, id), "deed " + id + " does not stand"));
        brood.ifPresent(
                code -> tables.entries.ledger(handle, code).with(deed.content().entries()));
        deed.content()
                .potChanges()
                .forEach(changes ->
                        tables.entries.ledger(handle, changes.brood()).with(changes.entries()));
    }

    @Override
    public List<Deed.Summary> latestDeeds(int most) {
        return transactions.read(handle -> tables.deeds.latestStanding(handle, most));
    }

    @Override
    public Optional<Deed> deed(UUID id) {
        return transactions.read(handle -> tables.deeds.find(handle, id).map(head -> tables.deed(handle, head)));
    }

    @Override
    public Shelf shelf() {
        return transactions.read(tables.moves::shelf);
    }

    @Override
    public Map<String, LessonNote> leftOut() {
        return transactions.read(tables.lessons::leftOut);
    }

    private boolean addBrood(Handle handle, Brood brood) {
        Optional<Brood> known = tables.broods.find(handle, brood.code());
        known.ifPresent(stored -> requireSame(handle, stored, brood));
        if (known.isEmpty()) {
            tables.broods.insert(handle, brood, Optional.empty());
        } else {
            tables.broods.standByItself(handle, brood.code());
        }
        return known.isEmpty();
    }

    private void requireSame(Handle handle, Brood stored, Brood brood) {
        requireSame(stored, brood, "taxon", Brood::taxon);
        requireSame(stored, brood, "zone", Brood::zone);
        requireSame(stored, brood, "laid", Brood::laid);
        requireSame(stored, brood, "pulled", Brood::pulled);
        requireSame(stored, brood, "stages", Brood::stages);
        requireSame(stored, brood, "referenceTemperatureCelsius", Brood::referenceTemperatureCelsius);
        // A folder may say what was believed when the brood came, or what its keeper came to believe since.
        if (!brood.timing().equals(tables.broods.timingItCameWith(handle, brood.code()))) {
            requireSame(stored, brood, "timing", Brood::timing);
        }
    }

    private static void requireSame(Brood stored, Brood brood, String fact, Function<Brood, Object> value) {
        Require.that(
                value.apply(stored).equals(value.apply(brood)),
                "%s of brood '%s' is %s but the store knows it as %s"
                        .formatted(fact, brood.code(), value.apply(brood), value.apply(stored)));
    }
}
