package org.moultwright.ui.shelf;

import java.util.Optional;
import javafx.scene.Scene;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.MemoryBroodBook;
import org.moultwright.workflow.RoomView;

/** The shelf's screen alone, to be timed on the toolkit's thread. */
public final class MeasuredShelf {
    private final ShelfViewModel model;
    private Optional<Scene> scene = Optional.empty();

    public MeasuredShelf(RoomView room) {
        this.model = new ShelfViewModel(InventedShelfDesk.of(room, new MemoryBroodBook()));
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
