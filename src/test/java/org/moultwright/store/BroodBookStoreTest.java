package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.ReadingSource;

class BroodBookStoreTest {
    private static final long[] SEEDS = LongStream.rangeClosed(1, 25).toArray();

    @TempDir
    Path folder;

    private H2Store store;

    @BeforeEach
    void open() {
        store = H2Store.open(folder.resolve("room.store"));
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void everyRecordComesBackAsItWasAfterReopening() {
        for (long seed : SEEDS) {
            BroodRecord record = SampleRecords.record(seed);
            assertThat(takeIn(record).readings()).as("seed %d", seed).isGreaterThanOrEqualTo(600);
        }
        reopen();
        for (long seed : SEEDS) {
            BroodRecord record = SampleRecords.record(seed);
            assertThat(stored(record)).as("seed %d", seed).isEqualTo(record);
        }
    }

    @Test
    void takingInTwiceChangesNothing() {
        for (long seed : SEEDS) {
            BroodRecord record = SampleRecords.record(seed);
            takeIn(record);
            assertThat(takeIn(record).changedNothing()).as("seed %d", seed).isTrue();
        }
    }

    private BroodBook.TakenIn takeIn(BroodRecord record) {
        return store.book().takeIn(record, ReadingSource.of(record));
    }

    private BroodRecord stored(BroodRecord record) {
        Map<String, ReadingSeries> readings = new HashMap<>();
        record.readings()
                .keySet()
                .forEach(probe -> readings.put(probe, store.readings().series(probe, Instant.MIN, Instant.MAX)));
        return store.book().find(record.brood().code()).orElseThrow().withReadings(readings);
    }

    private void reopen() {
        store.close();
        open();
    }
}
