package org.moultwright.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.exchange.PlainBroodFolders;
import org.moultwright.store.H2Store;
import org.moultwright.task.Progress;
import org.moultwright.workflow.TakeInFolders;

class WatchedFoldersTest {
    private static final Path FOLDER = Path.of("demo-data", "cc-26-a");

    @TempDir
    private Path temporary;

    @Test
    void sayHowManyReadingsAreIn() {
        Watched watched = new Watched(Integer.MAX_VALUE);
        try (H2Store store = H2Store.open(temporary.resolve("room.store"))) {
            takeIn(store, watched);
            assertThat(watched.said).first().isEqualTo("5 000 readings so far");
            assertThat(store.readings().latest()).isNotEmpty();
        }
    }

    @Test
    void stoppedHalfWayTheStoreHoldsNothingOfThem() {
        try (H2Store store = H2Store.open(temporary.resolve("room.store"))) {
            assertThat(catchThrowable(() -> takeIn(store, new Watched(1)))).isInstanceOf(CancellationException.class);
            assertThat(store.book().broods()).isEmpty();
            assertThat(store.readings().latest()).isEmpty();
        }
    }

    private static void takeIn(H2Store store, Progress progress) {
        new TakeInFolders(new WatchedFolders(new PlainBroodFolders(), progress), store.book()).takeIn(FOLDER);
    }

    /** Is cancelled once it was told so often. */
    private static final class Watched implements Progress {
        private final List<String> said = new ArrayList<>();
        private final int patience;

        Watched(int patience) {
            this.patience = patience;
        }

        @Override
        public void report(double fraction, String words) {
            said.add(words);
        }

        @Override
        public boolean isCancelled() {
            return said.size() >= patience;
        }
    }
}
