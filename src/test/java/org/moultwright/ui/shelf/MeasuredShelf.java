package org.moultwright.ui.shelf;

import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import org.moultwright.document.PdfLabelPrinter;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.label.LabelDesk;
import org.moultwright.ui.label.NoPrinter;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.ArrangeShelf;
import org.moultwright.workflow.MemoryBroodBook;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.ShareTrays;
import org.moultwright.workflow.UndoDeed;

/** The shelf's screen alone, to be timed on the toolkit's thread. */
public final class MeasuredShelf {
    private final ShelfViewModel model;
    private Optional<Scene> scene = Optional.empty();

    public MeasuredShelf(RoomView room) {
        MemoryBroodBook book = new MemoryBroodBook();
        this.model = new ShelfViewModel(new ShelfDesk(
                new SimpleObjectProperty<>(room),
                () -> {},
                new ArrangeShelf(book, room::now, UUID::randomUUID),
                new ShareTrays(book, room::now, UUID::randomUUID),
                new UndoDeed(book, room::now, UUID::randomUUID),
                new LabelDesk(new PdfLabelPrinter(), name -> Optional.empty(), new NoPrinter(), new InlineRunner()),
                new InlineRunner(),
                (at, undo) -> {},
                room::now,
                new DayWords(RoomFixture.ZONE),
                new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY)));
    }

    /** Builds the view and draws it. */
    public void open() {
        Scene opened = new Scene(new ShelfView(model), 1188, 752);
        new Appearance().dress(opened.getStylesheets());
        opened.snapshot(null);
        scene = Optional.of(opened);
    }

    /** Goes one card further and draws that. */
    public void step() {
        model.along(1);
        scene.orElseThrow().snapshot(null);
    }
}
