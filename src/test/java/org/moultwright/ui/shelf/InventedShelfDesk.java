package org.moultwright.ui.shelf;

import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.SimpleObjectProperty;
import org.moultwright.document.PdfLabelPrinter;
import org.moultwright.domain.label.LabelStack;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.label.LabelDesk;
import org.moultwright.ui.label.NoPrinter;
import org.moultwright.ui.label.StackChoice;
import org.moultwright.workflow.ArrangeShelf;
import org.moultwright.workflow.MemoryBroodBook;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.ShareTrays;
import org.moultwright.workflow.UndoDeed;

/** What a shelf works with, over a book in memory. */
final class InventedShelfDesk {
    private InventedShelfDesk() {}

    static ShelfDesk of(RoomView room, MemoryBroodBook book) {
        return new ShelfDesk(
                new SimpleObjectProperty<>(room),
                () -> {},
                new ArrangeShelf(book, room::now, UUID::randomUUID),
                new ShareTrays(book, room::now, UUID::randomUUID),
                new UndoDeed(book, room::now, UUID::randomUUID),
                new LabelDesk(
                        new PdfLabelPrinter(),
                        name -> Optional.empty(),
                        new NoPrinter(),
                        new StackChoice(() -> LabelStack.NEW, stack -> {}),
                        new InlineRunner()),
                new InlineRunner(),
                (at, undo) -> {},
                room::now,
                new DayWords(RoomFixture.ZONE),
                new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY));
    }
}
