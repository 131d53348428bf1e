package org.moultwright.store.book;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Pot;
import org.moultwright.domain.Require;
import org.moultwright.store.sql.Cells;
import org.moultwright.store.sql.RowReader;

/** Pots. No two that stand have the same code, whatever their broods. */
final class PotTable extends EventTable<Pot> {
    PotTable() {
        super("pot");
    }

    @Override
    void insert(Handle handle, String brood, Optional<UUID> deed, List<Pot> pots) {
        pots.forEach(pot -> requireFree(handle, pot.code()));
        super.insert(handle, brood, deed, pots);
        Require.that(
                pots.stream().map(Pot::code).distinct().count() == pots.size(), "two of the pots have the same code");
    }

    @Override
    Cells cells(Pot pot) {
        return new Cells()
                .with("code", pot.code())
                .with("tray", pot.tray())
                .with("potted", pot.potted())
                .with("label", pot.label())
                .with("pot_size", pot.size());
    }

    @Override
    RowReader<Pot> reader(Handle handle, String brood) {
        return row -> new Pot(
                row.text("code"), row.text("tray"), row.instant("potted"), row.text("label"), row.text("pot_size"));
    }

    @Override
    Object identity(Pot pot) {
        return pot.code();
    }

    @Override
    Object content(Pot pot) {
        return pot;
    }

    private static void requireFree(Handle handle, String code) {
        handle.createQuery("select brood from pot where code = :code"
                        + " and not exists (select 1 from deed undoing where undoing.undoes = pot.deed)")
                .bind("code", code)
                .mapTo(String.class)
                .findFirst()
                .ifPresent(
                        brood -> Require.that(false, "pot '" + code + "' is already a pot of brood '" + brood + "'"));
    }
}
