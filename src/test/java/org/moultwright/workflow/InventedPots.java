package org.moultwright.workflow;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Pot;
import org.moultwright.domain.Stage;
import org.moultwright.domain.code.PotCode;
import org.moultwright.domain.code.PotPrefix;

/** Invented broods all of whose animals are in pots, or some of them still in their tray. */
public final class InventedPots {
    public static final Instant NOW = Instant.parse("2026-05-05T20:41:00Z");
    private static final Duration SINCE = Duration.ofDays(30);

    private InventedPots() {}

    /** A brood with so many pots, coded by a prefix, potted thirty days ago at noon, and two animals left in tray A1. */
    public static BroodRecord brood(String code, String prefix, int pots) {
        Instant potted = NOW.minus(SINCE);
        Brood brood = new Brood(
                code,
                "Chromatopelma cyaneopubescens",
                ZoneOffset.UTC,
                Optional.empty(),
                Optional.of(potted.minus(SINCE)),
                List.of(Stage.values()),
                27,
                Optional.empty());
        String tray = "A1 " + prefix;
        List<LedgerEntry> entries = List.of(
                entry(potted.minusSeconds(60), Account.SAC, Account.tray(tray), pots + 2, Cause.OPENED),
                entry(potted, Account.tray(tray), Account.POTTED, pots, Cause.POTTED));
        List<Pot> made = new ArrayList<>();
        for (int number = 1; number <= pots; number++) {
            made.add(new Pot(
                    codeOf(prefix, number), tray, potted, "sling 5 Apr 26", number % 3 == 0 ? "60 ml" : "30 ml"));
        }
        BroodRecord empty = BroodRecord.of(brood);
        return new BroodRecord(
                brood,
                Ledger.of(entries),
                empty.checks(),
                empty.stays(),
                empty.probeStays(),
                empty.setPoints(),
                empty.readings(),
                empty.mould(),
                empty.care(),
                made,
                empty.runUp());
    }

    public static String codeOf(String prefix, int number) {
        return new PotCode(new PotPrefix(prefix), number).text();
    }

    private static LedgerEntry entry(Instant at, Account from, Account to, int animals, Cause cause) {
        return LedgerEntry.of(UUID.randomUUID(), at, from, to, Stage.INSTAR2, animals, cause);
    }
}
