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
        UUID id = UUID.nameUUIDFromBytes(code.getBytes(StandardCharsets.UTF_8));
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

    /** A probe in a container from an instant on. */
    public static ProbeStay probe(String probe, String container, Instant from) {
        return new ProbeStay(probe, container, new Span(from, Optional.empty()), 0, 0.2);
    }

    /** Eggs that came out of the sac into tray A1. */
    public static LedgerEntry opened(UUID id, Instant at, int count) {
        return LedgerEntry.of(id, at, Account.SAC, Account.tray("A1"), Stage.EGG, count, Cause.OPENED);
    }
}
