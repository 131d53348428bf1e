package org.moultwright.workflow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.InventedBrood;
import org.moultwright.domain.Look;
import org.moultwright.domain.PhotoNote;
import org.moultwright.domain.PotEvent;
import org.moultwright.domain.Stage;

/** What a sitter may write and what is refused, whoever asks the book for it. */
class SittersBookTest {
    private static final String BROOD = "PP-26-P";
    private static final Instant EVENING = Instant.parse("2026-06-01T19:00:00Z");

    private final MemoryMark mark = new MemoryMark();
    private final MemoryBroodBook memory = new MemoryBroodBook();
    private SitterMode mode;
    private SittersBook book;
    private SitterDeeds sitter;
    private String tray = "";

    @BeforeEach
    void fillTheBook() {
        mode = new SitterMode(mark, () -> EVENING);
        book = new SittersBook(memory, mode);
        BroodRecord potted = InventedPots.brood(BROOD, "26P", 3);
        book.takeIn(potted, ReadingSource.of(potted));
        tray = potted.pots().get(0).tray();
        book.keep(new Deed(
                new Deed.Summary(UUID.randomUUID(), BROOD, EVENING.minusSeconds(60), "more found"),
                Optional.empty(),
                Deed.Content.ofEntries(List.of(InventedBrood.opened(UUID.randomUUID(), EVENING.minusSeconds(60), 5)))));
        sitter = new SitterDeeds(new RecordRound(book, () -> EVENING, UUID::randomUUID), () -> EVENING);
    }

    @Test
    void theDeadAndWaterAreWrittenAndTakenBack() {
        mode.handOver();
        TrayView view = view();
        sitter.dead(view);
        sitter.watered(view);
        assertThat(record().ledger().balance(Account.DEAD)).isEqualTo(1);
        assertThat(record().checks()).isEmpty();
        assertThat(record().care())
                .extracting(CareNote::what)
                .contains(CareNote.WATERED)
                .isSubsetOf(CareNote.WATERED, CareNote.NOTED);
        undo().undo();
        undo().undo();
        assertThat(record().ledger().balance(Account.DEAD)).isZero();
        assertThat(record().care()).isEmpty();
    }

    @Test
    void everythingElseIsRefused() {
        mode.handOver();
        RecordRound round = new RecordRound(book, () -> EVENING, UUID::randomUUID);
        refused(() -> round.save(
                sheet(Map.of(Stage.INSTAR1, new Look.None()), Set.of(), Optional.empty()), Optional.empty()));
        refused(() -> round.save(sheet(Map.of(), Set.of(CareNote.CLEANED), Optional.empty()), Optional.empty()));
        refused(() -> round.save(
                sheet(Map.of(), Set.of(), Optional.of(new RoundSheet.Mould("shells", "speck", "removed"))),
                Optional.empty()));
        refused(() -> new ArrangeShelf(book, () -> EVENING, UUID::randomUUID)
                .add("box 9", ContainerKind.BOX, Optional.empty()));
        refused(() -> new TendPots(book, () -> EVENING, UUID::randomUUID)
                .tend(
                        List.of(new TendPots.Chosen(
                                BROOD, record().pots().get(0).code())),
                        PotEvent.What.FED,
                        EVENING,
                        ""));
        refused(() -> book.takeIn(record(), ReadingSource.of(record())));
        refused(() -> SittersBook.guarding((summary, readings, placings) -> 0, mode)
                .takeIn(
                        new Deed.Summary(UUID.randomUUID(), Optional.empty(), EVENING, "a file"),
                        ReadingSource.of(record()),
                        List::of));
        refused(() -> book.keep(new Deed(
                new Deed.Summary(UUID.randomUUID(), BROOD, EVENING, "a photo"),
                Optional.empty(),
                Deed.Content.ofPhotos(
                        List.of(new PhotoNote(UUID.randomUUID(), EVENING, tray, "a".repeat(64) + ".jpg", ""))))));
        refused(() -> book.keep(new Deed(
                new Deed.Summary(UUID.randomUUID(), BROOD, EVENING, "more found"),
                Optional.empty(),
                Deed.Content.ofEntries(List.of(InventedBrood.opened(UUID.randomUUID(), EVENING, 1))))));
    }

    @Test
    void whatTheKeeperWroteBeforeIsNotTakenBack() {
        mode.handOver();
        refused(() -> undo().undo());
        sitter.watered(view());
        undo().undo();
        refused(() -> undo().undo());
    }

    @Test
    void itStaysSoUntilTheKeeperTakesItBack() {
        mode.handOver();
        SitterMode again = new SitterMode(mark, () -> EVENING);
        assertThat(again.since()).contains(EVENING);
        again.takeBack();
        assertThat(new SitterMode(mark, () -> EVENING).since()).isEmpty();
        mode.takeBack();
        undo().undo();
    }

    private static void refused(ThrowingCallable deed) {
        assertThatIllegalArgumentException().isThrownBy(deed).withMessageContaining("sitter's hands");
    }

    private RoundSheet sheet(Map<Stage, Look> looks, Set<String> care, Optional<RoundSheet.Mould> mould) {
        return new RoundSheet(BROOD, tray, EVENING, looks, List.of(), mould, care, "");
    }

    private UndoDeed undo() {
        return new UndoDeed(book, () -> EVENING, UUID::randomUUID);
    }

    private TrayView view() {
        return new TrayView(
                BROOD,
                tray,
                "",
                record().ledger().balance(Account.tray(tray)),
                Map.of(Stage.INSTAR1, 5),
                Optional.empty(),
                TrayView.Due.DUE,
                Optional.empty());
    }

    private BroodRecord record() {
        return book.find(BROOD).orElseThrow();
    }
}
