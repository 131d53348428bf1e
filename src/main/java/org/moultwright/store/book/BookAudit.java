package org.moultwright.store.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.store.sql.Problem;

/**
 * Reads every brood and every deed whole: each ledger replays without an account below zero, every
 * correction reverses what it names, what was undone was reversed, every deed potted as many animals as it made pots, and
 * no code stands on two pots.
 *
 * @param broods how many broods there are
 * @param entries how many ledger entries could be read
 * @param problems what does not hold
 */
public record BookAudit(int broods, int entries, List<Problem> problems) {
    private static final BookTables TABLES = new BookTables();

    public static BookAudit of(Handle handle) {
        List<Problem> problems = new ArrayList<>();
        List<String> codes = handle.createQuery("select code from brood order by code")
                .mapTo(String.class)
                .list();
        int entries = 0;
        for (String code : codes) {
            entries += record(handle, code, problems)
                    .map(record -> record.ledger().entries().size())
                    .orElse(0);
        }
        moves(handle, problems);
        pots(handle, problems);
        undone(handle).forEach(deed -> requireReversed(handle, deed, problems));
        return new BookAudit(codes.size(), entries, List.copyOf(problems));
    }

    private static Optional<BroodRecord> record(Handle handle, String code, List<Problem> problems) {
        try {
            TABLES.lessons.all(handle, code);
            return TABLES.broods.find(handle, code).map(brood -> TABLES.record(handle, brood));
        } catch (IllegalArgumentException e) {
            problems.add(new Problem("ledger_entry", "brood " + code, String.valueOf(e.getMessage())));
            return Optional.empty();
        }
    }

    private static void moves(Handle handle, List<Problem> problems) {
        try {
            TABLES.moves.all(handle);
        } catch (IllegalArgumentException e) {
            problems.add(new Problem("container_move", "a row", String.valueOf(e.getMessage())));
        }
    }

    private static void pots(Handle handle, List<Problem> problems) {
        handle.createQuery("select code from pot where not exists"
                        + " (select 1 from deed undoing where undoing.undoes = pot.deed)"
                        + " group by code having count(*) > 1 order by code")
                .mapTo(String.class)
                .forEach(code -> problems.add(new Problem("pot", code, "the code stands on more than one pot")));
        handle.createQuery("select id from deed where undoes is null"
                        + " and (select count(*) from pot where pot.deed = deed.id) <>"
                        + " (select coalesce(sum(animals), 0) from ledger_entry entry where entry.deed = deed.id"
                        + " and entry.to_account = :potted and entry.cause = :cause)")
                .bind("potted", Account.POTTED.code())
                .bind("cause", Cause.POTTED.words())
                .mapTo(UUID.class)
                .forEach(deed -> problems.add(new Problem(
                        "deed", deed.toString(), "as many pots come of a deed as animals it potted, but not here")));
    }

    private static List<UUID> undone(Handle handle) {
        return handle.createQuery("select undoes from deed where undoes is not null")
                .mapTo(UUID.class)
                .list();
    }

    private static void requireReversed(Handle handle, UUID deed, List<Problem> problems) {
        String open = handle.createQuery("select count(*) from ledger_entry entry where deed = :deed and not exists"
                        + " (select 1 from ledger_entry reversal where reversal.corrects = entry.id)")
                .bind("deed", deed)
                .mapTo(String.class)
                .one();
        if (!open.equals("0")) {
            problems.add(new Problem(
                    "deed", deed.toString(), "an undone deed has all entries reversed, but " + open + " stand"));
        }
    }
}
