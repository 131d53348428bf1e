package org.moultwright.domain;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * A number of animals of one stage that went from one account to another.
 *
 * @param id names this entry for ever
 * @param at when the animals moved
 * @param from the account they left
 * @param to the account they reached, another than {@code from}
 * @param stage the stage they were in as they moved
 * @param count how many, at least one
 * @param cause why
 * @param note anything the keeper wants to add, possibly empty
 * @param corrects the entry this one reverses, if it is a correction
 */
public record LedgerEntry(
        UUID id,
        Instant at,
        Account from,
        Account to,
        Stage stage,
        int count,
        Cause cause,
        String note,
        Optional<UUID> corrects) {

    public LedgerEntry {
        Require.that(!from.equals(to), "from and to are both '" + from.code() + "'");
        Require.atLeast("count", count, 1);
    }

    /** A plain entry: no note, correcting nothing. */
    public static LedgerEntry of(UUID id, Instant at, Account from, Account to, Stage stage, int count, Cause cause) {
        return new LedgerEntry(id, at, from, to, stage, count, cause, "", Optional.empty());
    }

    /**
     * The entry that takes this one back: the same animals, the same instant, the other way round, so that
     * both cancel at every instant.
     */
    public LedgerEntry reversal(UUID reversalId) {
        return new LedgerEntry(reversalId, at, to, from, stage, count, cause, note, Optional.of(id));
    }

    /** What this entry adds to an account: positive where animals arrive, negative where they leave. */
    public int effectOn(Account account) {
        if (account.equals(to)) {
            return count;
        }
        return account.equals(from) ? -count : 0;
    }
}
