package org.moultwright.domain;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Invented broods of which next to nothing is written, for tests that are about something else. */
public final class InventedBrood {
    private InventedBrood() {}

    public static Brood brood(String code) {
        return new Brood(
                code,
                "Invented species",
                ZoneId.of("UTC"),
                Optional.empty(),
                Optional.empty(),
                List.of(Stage.EGG, Stage.INSTAR2),
                27,
                Optional.empty());
    }

    /** A brood opened into tray A1, and the probes that measure for it. The same each time it is made. */
    public static BroodRecord measured(String code, Instant openedAt, List<ProbeStay> probes) {
        UUID id = id(code);
        return new BroodRecord(
                brood(code),
                Ledger.of(List.of(opened(id, openedAt, 200))),
                List.of(),
                List.of(),
                probes,
                List.of(),
                Map.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    /** One whose animals were all potted, and its tray looked at for the last time. The same each time it is made. */
    public static BroodRecord completed(String code, Instant openedAt, Instant end, List<ProbeStay> probes) {
        BroodRecord record = measured(code, openedAt, probes);
        LedgerEntry potted = LedgerEntry.of(
                id(code + " potted"),
                end,
                Account.tray("A1"),
                Account.POTTED,
                Stage.INSTAR2,
                record.ledger().opened(),
                Cause.POTTED);
        return new BroodRecord(
                record.brood(),
                record.ledger().with(List.of(potted)),
                List.of(new Check(id(code + " look"), "A1", end, Map.of(Stage.INSTAR2, new Look.Full(0)))),
                record.stays(),
                record.probeStays(),
                record.setPoints(),
                record.readings(),
                record.mould(),
                record.care(),
                record.pots(),
                record.runUp());
    }

    private static UUID id(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }

    /** A probe in a container from an instant on. */
    public static ProbeStay probe(String probe, String container, Instant from) {
        return new ProbeStay(probe, container, new Span(from, Optional.empty()), 0, 0.2);
    }

    /** Eggs that came out of the sac into tray A1. */
    public static LedgerEntry opened(UUID id, Instant at, int count) {
        return LedgerEntry.of(id, at, Account.SAC, Account.tray("A1"), Stage.EGG, count, Cause.OPENED);
    }
}
