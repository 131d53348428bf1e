package org.moultwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.RateForm;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Timing;
import org.moultwright.workflow.StateBelief;
import org.moultwright.workflow.UndoDeed;

/** What a keeper comes to believe of a brood's timing is on disk, holds, and can be taken back. */
class BeliefsStoreTest {
    private static final Instant NOW = Instant.parse("2026-04-01T20:00:00Z");
    private static final String CODE = "AA-26-A";
    private static final Timing CAME_WITH = new Timing(Map.of(Stage.INSTAR2, 70.0), 0.12, new RateForm.Briere1(11, 38));
    private static final List<Timing> BELIEVED = List.of(
            new Timing(Map.of(Stage.POSTEMBRYO, 30.0, Stage.INSTAR2, 72.0), 0.1, new RateForm.Linear(12)),
            new Timing(
                    Map.of(Stage.INSTAR2, 80.5),
                    0.3,
                    new RateForm.Table(List.of(new RateForm.Point(15, 0), new RateForm.Point(30, 2.5)))),
            new Timing(Map.of(Stage.INSTAR2, 66.0), 0.2, new RateForm.Lactin2(0.15, 37, 6, -0.2)));

    @TempDir
    Path folder;

    private Path file;
    private BroodRecord brood;

    @BeforeEach
    void takeIn() {
        file = folder.resolve("room.store");
        BroodRecord invented = InventedBrood.measured(CODE, NOW, List.of());
        brood = invented.withBrood(invented.brood().withTiming(Optional.of(CAME_WITH)));
        try (H2Store store = H2Store.open(file)) {
            store.book().takeIn(brood, sink -> {});
        }
    }

    @Test
    void theLatestBeliefHoldsAndIsOnDisk() {
        for (Timing timing : BELIEVED) {
            try (H2Store store = H2Store.open(file)) {
                belief(store).believe(CODE, Optional.of(timing));
            }
            try (H2Store store = H2Store.open(file)) {
                assertThat(timing(store)).contains(timing);
                assertThat(store.check().problems()).isEmpty();
            }
        }
    }

    @Test
    void undoneTheOneBeforeHoldsAgain() {
        try (H2Store store = H2Store.open(file)) {
            belief(store).believe(CODE, Optional.of(BELIEVED.get(0)));
            belief(store).believe(CODE, Optional.empty());
            assertThat(timing(store)).isEmpty();
            UndoDeed undo = new UndoDeed(store.book(), () -> NOW, UUID::randomUUID);
            undo.undo();
            assertThat(timing(store)).contains(BELIEVED.get(0));
            undo.undo();
            assertThat(timing(store)).contains(CAME_WITH);
        }
    }

    @Test
    void theFolderItCameFromAndTheOneItWentToAreBothStillTheSameBrood() {
        try (H2Store store = H2Store.open(file)) {
            belief(store).believe(CODE, Optional.of(BELIEVED.get(0)));
            assertThat(store.book().takeIn(brood, sink -> {}).changedNothing()).isTrue();
            BroodRecord now = store.book().find(CODE).orElseThrow();
            assertThat(store.book().takeIn(now, sink -> {}).changedNothing()).isTrue();
            BroodRecord another = brood.withBrood(brood.brood().withTiming(Optional.of(BELIEVED.get(1))));
            assertThatThrownBy(() -> store.book().takeIn(another, sink -> {}))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("timing");
        }
    }

    private static StateBelief belief(H2Store store) {
        return new StateBelief(store.book(), () -> NOW, UUID::randomUUID);
    }

    private static Optional<Timing> timing(H2Store store) {
        return store.book().find(CODE).orElseThrow().brood().timing();
    }
}
