package org.moultwright.store;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Quality;
import org.moultwright.domain.Reading;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.ReadingLog.Logged;

/** Writes deeds and readings into a store until it is killed, and prints each once it is acknowledged. */
final class StoreWriter {
    static final String BROOD = "KK-26-A";
    static final String PROBE = "P-1";
    static final Instant START = Instant.parse("2026-03-01T20:00:00Z");

    private static final int SECONDS_A_RUN = 10_000_000;
    private static final int SECONDS_A_READING = 600;
    private static final Account TRAY = Account.tray("A1");

    private final H2Store store;
    private Instant now;

    private StoreWriter(H2Store store, int run) {
        this.store = store;
        this.now = START.plusSeconds((long) run * SECONDS_A_RUN);
    }

    public static void main(String[] arguments) {
        H2Store store = H2Store.open(Path.of(arguments[0]));
        StoreWriter writer = new StoreWriter(store, Integer.parseInt(arguments[1]));
        store.book().takeIn(BroodRecord.of(InventedBrood.brood(BROOD)), sink -> {});
        while (true) {
            writer.keepDeed();
            writer.keepReadings();
        }
    }

    static String entryLine(UUID id) {
        return "entry " + id + ".";
    }

    static String readingLine(Instant takenAt) {
        return "reading " + takenAt + ".";
    }

    /** Two animals are opened and one of them dies: a ledger with half a deed would not balance. */
    private void keepDeed() {
        LedgerEntry opened = entry(Account.SAC, TRAY, 2);
        LedgerEntry died = entry(TRAY, Account.DEAD, 1);
        store.book()
                .keep(new Deed(
                        new Deed.Summary(UUID.randomUUID(), BROOD, now, "A1 looked at"),
                        Optional.empty(),
                        Deed.Content.ofEntries(List.of(opened, died))));
        System.out.println(entryLine(opened.id()));
        System.out.println(entryLine(died.id()));
    }

    private LedgerEntry entry(Account from, Account to, int count) {
        return LedgerEntry.of(UUID.randomUUID(), now, from, to, Stage.EGG, count, Cause.UNKNOWN);
    }

    private void keepReadings() {
        Instant first = now;
        Instant second = now.plusSeconds(SECONDS_A_READING);
        store.readings().append(PROBE, List.of(reading(first), reading(second)));
        System.out.println(readingLine(first));
        System.out.println(readingLine(second));
        now = second.plusSeconds(SECONDS_A_READING);
    }

    private static Logged reading(Instant at) {
        return new Logged(new Reading(at, 26.5, 71, Quality.GOOD), "26.5;71");
    }
}
