package org.moultwright.domain;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.UUID;
import java.util.stream.LongStream;

/** Seeded random ledgers: animals opened into trays, moved, lost, potted, and corrections among them. */
public final class LedgerHistories {
    private static final Instant START = Instant.parse("2026-03-01T20:00:00Z");
    private static final List<Account> TRAYS = List.of(Account.tray("A1"), Account.tray("A2"), Account.tray("A3"));
    private static final List<Account> SINKS =
            List.of(Account.DEAD, Account.INFERTILE, Account.MISSING, Account.POTTED, Account.HANDED_OVER);

    private LedgerHistories() {}

    public static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    /** The entries of a valid history in the order they were made; times run forwards except for reversals. */
    public static List<LedgerEntry> entries(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<LedgerEntry> entries = new ArrayList<>();
        Instant at = START;
        for (Account tray : TRAYS) {
            entries.add(entry(random, at, Account.SAC, tray, 20 + random.nextInt(200), Cause.OPENED));
        }
        int steps = 20 + random.nextInt(60);
        for (int i = 0; i < steps; i++) {
            at = at.plus(Duration.ofMinutes(1 + random.nextInt(3000)));
            addStep(random, entries, at);
        }
        return entries;
    }

    private static void addStep(SplittableRandom random, List<LedgerEntry> entries, Instant at) {
        LedgerEntry last = entries.get(entries.size() - 1);
        if (random.nextInt(8) == 0 && last.corrects().isEmpty()) {
            entries.add(last.reversal(id(random)));
            return;
        }
        Account from = TRAYS.get(random.nextInt(TRAYS.size()));
        int held = Ledger.of(entries).balance(from);
        if (held > 0) {
            Account to = random.nextInt(5) == 0
                    ? TRAYS.get((TRAYS.indexOf(from) + 1) % TRAYS.size())
                    : SINKS.get(random.nextInt(SINKS.size()));
            entries.add(entry(random, at, from, to, 1 + random.nextInt(Math.min(held, 12)), Cause.UNKNOWN));
        }
    }

    private static LedgerEntry entry(
            SplittableRandom random, Instant at, Account from, Account to, int count, Cause cause) {
        Stage stage = Stage.values()[random.nextInt(Stage.values().length)];
        return LedgerEntry.of(id(random), at, from, to, stage, count, cause);
    }

    private static UUID id(SplittableRandom random) {
        return new UUID(random.nextLong(), random.nextLong());
    }
}
