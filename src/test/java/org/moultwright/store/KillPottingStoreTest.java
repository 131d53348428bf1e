package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;

/** Potting animals of two broods at once is killed without warning: each deed is there whole, in both broods, or not at all. */
class KillPottingStoreTest {
    private static final int KILLS = 6;
    private static final long SEED = 20260505;
    private static final int MOST_MILLIS_AFTER_FIRST = 250;

    @TempDir
    Path folder;

    @Test
    void aPottingIsInBothBroodsOrInNeither() throws IOException, InterruptedException {
        Path file = folder.resolve("room.store");
        SplittableRandom random = new SplittableRandom(SEED);
        List<String> acknowledged = new ArrayList<>();
        for (int kill = 0; kill < KILLS; kill++) {
            acknowledged.addAll(ChildJvm.saidUntilKilled(
                    PottingWriter.class,
                    random.nextInt(MOST_MILLIS_AFTER_FIRST),
                    file.toString(),
                    String.valueOf(kill)));
            try (H2Store store = H2Store.open(file)) {
                assertThat(store.check().problems())
                        .as("kill %d, seed %d", kill, SEED)
                        .isEmpty();
                BroodRecord first =
                        store.book().find(PottingWriter.BROODS.get(0)).orElseThrow();
                BroodRecord second =
                        store.book().find(PottingWriter.BROODS.get(1)).orElseThrow();
                assertThat(second.pots()).hasSameSizeAs(first.pots());
                assertThat(first.ledger().balance(Account.POTTED))
                        .isEqualTo(first.pots().size());
                assertThat(second.ledger().balance(Account.DEAD))
                        .isEqualTo((second.pots().size() - 1) / PottingWriter.EACH);
                assertThat(second.pots().stream().map(pot -> pot.code() + ".").toList())
                        .containsAll(acknowledged);
            }
        }
        assertThat(acknowledged).isNotEmpty();
    }
}
