package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Objects;
import java.util.zip.GZIPInputStream;
import org.h2.mvstore.MVStore;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.ReadingSeries;
import org.moultwright.store.file.ExactFilePath;

/**
 * A store as a kill left it: {@link StoreWriter}, killed in a run of {@link KillStoreTest} after it had
 * acknowledged the readings of 15:00 and 15:10. Its head names the pages before them and foretells the
 * place of the next ones wrongly, so that the database's own search misses them.
 */
class UnclosedStoreTest {
    private static final Instant LAST_ACKNOWLEDGED = Instant.parse("2033-10-08T15:10:00Z");

    @TempDir
    Path folder;

    private Path killed;

    @BeforeEach
    void unpack() throws IOException {
        killed = folder.resolve("killed.store");
        InputStream packed = Objects.requireNonNull(UnclosedStoreTest.class.getResourceAsStream("killed.store.gz"));
        try (InputStream bytes = new GZIPInputStream(packed)) {
            Files.copy(bytes, killed);
        }
    }

    @Test
    void whatWasAcknowledgedIsFound() {
        try (H2Store store = H2Store.open(killed)) {
            ReadingSeries series = store.readings().series(StoreWriter.PROBE, StoreWriter.START, Instant.MAX);
            assertThat(series.reading(series.size() - 1).takenAt()).isEqualTo(LAST_ACKNOWLEDGED);
            assertThat(store.check().problems()).isEmpty();
        }
    }

    @Test
    void theDatabasesOwnSearchWouldMissIt() {
        assertThat(pagesVersion(pages())).isLessThan(pagesVersion(pages().recoveryMode()));
    }

    private MVStore.Builder pages() {
        return new MVStore.Builder()
                .fileName(ExactFilePath.pageFileName(killed))
                .readOnly();
    }

    private static long pagesVersion(MVStore.Builder builder) {
        try (MVStore pages = builder.open()) {
            return pages.getCurrentVersion();
        }
    }
}
