package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Pot;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.UndoDeed;

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

    @Test
    void anUndoneDeedIsWithdrawnAndItsEntriesReversed() {
        BroodRecord record = SampleRecords.record(1);
        takeIn(record);
        Deed deed = deed(record, "T-1", 5);
        store.book().keep(deed);
        assertThat(store.book().deed(deed.summary().id())).contains(deed);
        assertThat(store.book().latestDeeds(5)).containsExactly(deed.summary());
        assertThat(stored(record).pots()).hasSize(record.pots().size() + 1);
        reopen();
        new UndoDeed(store.book(), InstantSource.system(), UUID::randomUUID).undo();
        assertThat(store.book().latestDeeds(5)).isEmpty();
        BroodRecord after = stored(record);
        assertThat(after.ledger().standing()).isEqualTo(record.ledger().standing());
        assertThat(after.pots()).isEqualTo(record.pots());
        assertThat(after.ledger().entries()).hasSize(record.ledger().entries().size() + 2);
        store.book().keep(deed(record, "T-1", 5));
        assertThat(takeIn(record).changedNothing()).isTrue();
    }

    @Test
    void whatTheLedgerCannotHoldLeavesNoTrace() {
        BroodRecord record = SampleRecords.record(1);
        takeIn(record);
        Deed tooMany = deed(record, "T-1", 1_000_000);
        assertThatIllegalArgumentException().isThrownBy(() -> store.book().keep(tooMany));
        Deed sameCode = deed(record, "T-2", 1);
        store.book().keep(sameCode);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> store.book().keep(deed(record, "T-2", 1)))
                .withMessageContaining("T-2");
        reopen();
        assertThat(store.book().latestDeeds(5)).containsExactly(sameCode.summary());
        assertThat(stored(record).ledger().entries())
                .hasSize(record.ledger().entries().size() + 1);
    }

    @Test
    void anImportThatFailsLeavesNoTrace() {
        BroodRecord record = SampleRecords.record(1);
        assertThatIllegalStateException()
                .isThrownBy(() -> store.book().takeIn(record, sink -> {
                    ReadingSource.of(record).handOver(sink);
                    throw new IllegalStateException("line 12");
                }));
        assertThat(store.book().broods()).isEmpty();
        assertThat(store.readings().latest()).isEmpty();
    }

    @Test
    void aBroodKnownOtherwiseIsRefusedByTheFact() {
        BroodRecord record = SampleRecords.record(1);
        takeIn(record);
        Brood known = record.brood();
        Brood other = new Brood(
                known.code(),
                "Another species",
                known.zone(),
                known.laid(),
                known.pulled(),
                known.stages(),
                known.referenceTemperatureCelsius(),
                known.timing());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> takeIn(BroodRecord.of(other)))
                .withMessageContaining("taxon");
    }

    private static Deed deed(BroodRecord record, String pot, int animals) {
        Instant late = Instant.parse("2027-01-01T00:00:00Z");
        Account fullest = record.ledger().balances().entrySet().stream()
                .filter(balance -> balance.getKey().isTray())
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
        return new Deed(
                new Deed.Summary(UUID.randomUUID(), record.brood().code(), late, "potted"),
                Optional.empty(),
                new Deed.Content(
                        List.of(LedgerEntry.of(
                                UUID.randomUUID(), late, fullest, Account.POTTED, Stage.EGG, animals, Cause.POTTED)),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(new Pot(pot, fullest.code(), late, ""))));
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
