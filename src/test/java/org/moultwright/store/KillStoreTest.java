package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
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
            List<String> ofThisRun = runUntilKilled(file, kill, random.nextInt(MOST_MILLIS_AFTER_FIRST));
            assertThat(ofThisRun).as("kill %d, seed %d", kill, SEED).isNotEmpty();
            acknowledged.addAll(ofThisRun);
            requireAllThere(file, acknowledged, kill);
        }
        reporter.publishEntry(KILLS + " kills, acknowledged writes that were all there", "" + acknowledged.size());
    }

    private static List<String> runUntilKilled(Path file, int run, int millisAfterFirst)
            throws IOException, InterruptedException {
        Process writer = ChildJvm.start(StoreWriter.class, file.toString(), String.valueOf(run));
        List<String> acknowledged = new ArrayList<>();
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(writer.getInputStream(), StandardCharsets.UTF_8))) {
            acknowledged.add(said.readLine());
            boolean endedByItself = writer.waitFor(millisAfterFirst, TimeUnit.MILLISECONDS);
            // The process itself would close the stream with what it still holds.
            writer.toHandle().destroyForcibly();
            assertThat(endedByItself)
                    .as("run %d ended before it was killed", run)
                    .isFalse();
            said.lines().filter(line -> line.endsWith(".")).forEach(acknowledged::add);
            writer.waitFor();
        } finally {
            writer.destroyForcibly();
        }
        return acknowledged;
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
