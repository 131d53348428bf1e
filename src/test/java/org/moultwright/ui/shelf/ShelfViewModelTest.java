package org.moultwright.ui.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.moultwright.ui.RoomFixture;
import org.moultwright.workflow.MemoryBroodBook;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.RoomView;

/** What is kept, before the room was read anew. */
class ShelfViewModelTest {
    private final RoomView room = RoomFixture.room();
    private final MemoryBroodBook book = new MemoryBroodBook();
    private final ShelfViewModel model = new ShelfViewModel(InventedShelfDesk.of(room, book));

    @BeforeEach
    void fill() {
        room.broods().forEach(brood -> book.takeIn(brood.record(), ReadingSource.of(brood.record())));
    }

    /** One Enter too many would else open a form for a tray that is just being put away. */
    @Test
    void aTrayThatWasJoinedHandsTheFocusToTheOneThatHoldsItsAnimals() {
        model.focusProperty().set("A1");
        model.openMerge();
        MergeForm form = (MergeForm) model.formProperty().get().orElseThrow();
        form.targets().typedProperty().set("A2");
        model.submit();
        assertThat(model.deeds().doneProperty().get()).isEqualTo("A1 joined with A2.");
        model.openMove();
        assertThat(model.formProperty().get().map(ShelfForm::title)).contains("Move A2");
    }
}
