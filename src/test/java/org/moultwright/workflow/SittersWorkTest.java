package org.moultwright.workflow;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.Stage;
import org.moultwright.workflow.SittersWork.Written;

/** What a sitter wrote, as the book tells it. */
class SittersWorkTest {
    private static final String BROOD = "PP-26-P";
    private static final Instant EVENING = Instant.parse("2026-06-01T19:00:00Z");

    private final MemoryBroodBook book = new MemoryBroodBook();
    private final MemoryMark mark = new MemoryMark();
    private Instant now = EVENING.minusSeconds(60);
    private SitterMode mode;
    private SitterDeeds sitter;
    private UndoDeed undo;
    private TrayView tray;

    @BeforeEach
    void fillTheBook() {
        mode = new SitterMode(mark, () -> now);
        sitter = new SitterDeeds(new RecordRound(book, () -> now, UUID::randomUUID), () -> now);
        undo = new UndoDeed(book, () -> now, UUID::randomUUID);
        BroodRecord potted = InventedPots.brood(BROOD, "26P", 3);
        book.takeIn(potted, ReadingSource.of(potted));
        tray = new TrayView(
                BROOD,
                potted.pots().get(0).tray(),
                "",
                5,
                Map.of(Stage.INSTAR1, 5),
                Optional.empty(),
                TrayView.Due.DUE,
                Optional.empty());
        book.keep(new Deed(
                new Deed.Summary(UUID.randomUUID(), BROOD, now, "more found"),
                Optional.empty(),
                Deed.Content.ofEntries(List.of(InventedBrood.opened(UUID.randomUUID(), now, 5)))));
        // The keeper's own, of the very sort a sitter writes.
        sitter.dead(tray);
        now = EVENING;
    }

    @Test
    void theKeepersOwnIsNoneOfIt() {
        mode.handOver();
        assertThat(work().last()).isEmpty();
        assertThat(work().all()).isEmpty();
    }

    @Test
    void itIsTheSameAfterTheDeskWasOpenedAnew() {
        mode.handOver();
        now = EVENING.plusSeconds(60);
        UUID first = sitter.dead(tray).id();
        now = EVENING.plusSeconds(120);
        UUID second = sitter.watered(tray).id();
        mode = new SitterMode(mark, () -> now);
        assertThat(work().all())
                .containsExactly(
                        new Written(second, now, BROOD, tray.tray(), 0),
                        new Written(first, EVENING.plusSeconds(60), BROOD, tray.tray(), 1));
        undo.undo(second);
        assertThat(work().last()).map(Written::deed).contains(first);
        undo.undo(first);
        assertThat(work().last()).isEmpty();
    }

    @Test
    void inTheKeepersHandsThereIsNone() {
        mode.handOver();
        sitter.dead(tray);
        mode.takeBack();
        assertThat(work().all()).isEmpty();
    }

    private SittersWork work() {
        return new SittersWork(book, mode);
    }
}
