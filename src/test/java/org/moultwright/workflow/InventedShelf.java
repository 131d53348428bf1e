package org.moultwright.workflow;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.ProbeStay;
import org.moultwright.domain.SetPoint;
import org.moultwright.domain.Span;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Stay;

/** An invented shelf: box 1 and box 2 in INC-1; trays of brood XX-26-A in box 1, those of XX-26-B in box 2. */
public final class InventedShelf {
    public static final Instant START = Instant.parse("2026-04-01T19:00:00Z");
    public static final Instant NOW = START.plus(Duration.ofDays(20));
    public static final String A = "XX-26-A";
    public static final String B = "XX-26-B";
    private static final Span FOR_GOOD = new Span(START, Optional.empty());

    private InventedShelf() {}

    /** Trays A1 with 40 eggs and A2 with 25, a probe in box 1. */
    public static BroodRecord broodA() {
        return brood(A, "box 1", List.of("A1", "A2"), List.of(InventedBrood.probe("P-1", "box 1", START)));
    }

    /** Tray B1 with 40 eggs, a probe in box 2. */
    public static BroodRecord broodB() {
        return brood(B, "box 2", List.of("B1"), List.of(InventedBrood.probe("P-2", "box 2", START)));
    }

    public static void takeIn(BroodBook book) {
        List.of(broodA(), broodB()).forEach(record -> book.takeIn(record, ReadingSource.of(record)));
    }

    /** A brood whose trays stand in a box of INC-1. */
    public static BroodRecord brood(String code, String box, List<String> trays, List<ProbeStay> probes) {
        List<LedgerEntry> entries = new ArrayList<>();
        List<Stay> stays = new ArrayList<>();
        stays.add(new Stay("INC-1", ContainerKind.INCUBATOR, Optional.empty(), FOR_GOOD));
        stays.add(new Stay(box, ContainerKind.BOX, Optional.of("INC-1"), FOR_GOOD));
        int animals = 40;
        for (String tray : trays) {
            entries.add(LedgerEntry.of(
                    UUID.nameUUIDFromBytes((code + tray).getBytes(StandardCharsets.UTF_8)),
                    START,
                    Account.SAC,
                    Account.tray(tray),
                    Stage.EGG,
                    animals,
                    Cause.OPENED));
            stays.add(new Stay(tray, ContainerKind.TRAY, Optional.of(box), FOR_GOOD));
            animals = Math.max(5, animals - 15);
        }
        BroodRecord bare = InventedBrood.measured(code, START, probes);
        return new BroodRecord(
                bare.brood(),
                Ledger.of(entries),
                bare.checks(),
                stays,
                probes,
                List.of(new SetPoint("INC-1", FOR_GOOD, 27, Double.NaN)),
                bare.readings(),
                bare.mould(),
                bare.care(),
                bare.pots(),
                bare.runUp());
    }
}
