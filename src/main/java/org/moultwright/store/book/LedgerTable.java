package org.moultwright.store.book;

import java.util.List;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Account;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Stage;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** The entries of all ledgers, corrections among them. Nothing is ever changed or taken out. */
final class LedgerTable extends EventTable<LedgerEntry> {
    LedgerTable() {
        super("ledger_entry");
    }

    /**
     * The ledger of a brood, replayed.
     *
     * @throws IllegalArgumentException if its entries do not make one
     */
    Ledger ledger(Handle handle, String brood) {
        return Ledger.of(all(handle, brood));
    }

    @Override
    Cells cells(LedgerEntry entry) {
        return new Cells()
                .with("id", entry.id())
                .with("happened_at", entry.at())
                .with("from_account", entry.from().code())
                .with("to_account", entry.to().code())
                .with("stage", entry.stage().key())
                .with("animals", entry.count())
                .with("cause", entry.cause().words())
                .with("note", entry.note())
                .with("corrects", entry.corrects());
    }

    @Override
    RowReader<LedgerEntry> reader(Handle handle, String brood) {
        return row -> new LedgerEntry(
                row.id("id"),
                row.instant("happened_at"),
                Account.fromCode(row.text("from_account")),
                Account.fromCode(row.text("to_account")),
                row.keyed("stage", Stage::fromKey),
                row.count("animals"),
                new Cause(row.text("cause")),
                row.text("note"),
                row.optionalId("corrects"));
    }

    @Override
    Object identity(LedgerEntry entry) {
        return entry.id();
    }

    /** A folder knows no corrections and need not know notes, so that these do not tell two entries apart. */
    @Override
    Object content(LedgerEntry entry) {
        return List.of(entry.at(), entry.from(), entry.to(), entry.stage(), entry.count(), entry.cause());
    }
}
