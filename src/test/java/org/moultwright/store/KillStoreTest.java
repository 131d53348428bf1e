package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.ReadingSeries;

/**
 * A program that writes into a store is killed without warning, thirty times over on the same store. All
 * it was told is saved must be there, and the store must be sound.
 */
class KillStoreTest {
    private static final int KILLS = 30;
    private static final long SEED = 20260301;

    /** Kills fall into the first writes as well as into a packing of readings by the hour. */
    private static final int MOST_MILLIS_AFTER_FIRST = 250;

    @TempDir
    Path folder;

    @Test
    void whatWasAcknowledgedIsThereAfterEveryKill(TestReporter reporter) throws IOException, InterruptedException {
        Path file = folder.resolve("room.store");
        SplittableRandom random = new SplittableRandom(SEED);
        List<String> acknowledged = new ArrayList<>();
        for (int kill = 0; kill < KILLS; kill++) {
            List<String> ofThisRun = ChildJvm.saidUntilKilled(
                    StoreWriter.class, random.nextInt(MOST_MILLIS_AFTER_FIRST), file.toString(), String.valueOf(kill));
            assertThat(ofThisRun).as("kill %d, seed %d", kill, SEED).isNotEmpty();
            acknowledged.addAll(ofThisRun);
            requireAllThere(file, acknowledged, kill);
        }
        reporter.publishEntry(KILLS + " kills, acknowledged writes that were all there", "" + acknowledged.size());
    }

    private static void requireAllThere(Path file, List<String> acknowledged, int kill) {
        try (H2Store store = H2Store.open(file)) {
            assertThat(store.check().problems())
                    .as("kill %d, seed %d", kill, SEED)
                    .isEmpty();
            BroodRecord record = store.book().find(StoreWriter.BROOD).orElseThrow();
            ReadingSeries readings = store.readings()
                    .series(StoreWriter.PROBE, StoreWriter.START, StoreWriter.START.plusSeconds(1_000_000_000));
            Set<String> there = new HashSet<>();
            record.ledger().entries().stream()
                    .map(LedgerEntry::id)
                    .map(StoreWriter::entryLine)
                    .forEach(there::add);
            readings.forEach(reading -> there.add(StoreWriter.readingLine(reading.takenAt())));
            assertThat(there).as("kill %d, seed %d", kill, SEED).containsAll(acknowledged);
        }
    }
}
