package org.moultwright.ui.shelf;

import java.time.InstantSource;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import javafx.beans.property.SimpleObjectProperty;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.label.NoPrinter;
import org.moultwright.workflow.ArrangeShelf;
import org.moultwright.workflow.MemoryBroodBook;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.ShareTrays;
import org.moultwright.workflow.UndoDeed;
import org.moultwright.workflow.WatchView;

/** What a shelf works with, over a book in memory. */
final class InventedShelfDesk {
    private InventedShelfDesk() {}

    static ShelfDesk of(RoomView room, MemoryBroodBook book) {
        return of(room, book, List::of, room::now);
    }

    /** @param heard what the probes on wires say at the clock's time */
    static ShelfDesk of(
            RoomView room, MemoryBroodBook book, Supplier<List<WatchView.Place>> heard, InstantSource clock) {
        return new ShelfDesk(
                new SimpleObjectProperty<>(room),
                heard,
                () -> {},
                new ArrangeShelf(book, room::now, UUID::randomUUID),
                new ShareTrays(book, room::now, UUID::randomUUID),
                new UndoDeed(book, room::now, UUID::randomUUID),
                NoPrinter.desk(),
                new InlineRunner(),
                (at, undo) -> {},
                clock,
                new DayWords(RoomFixture.ZONE),
                new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY));
    }
}
