package org.moultwright.ui.broods;

import java.time.InstantSource;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Parent;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.photo.PhotoDesk;
import org.moultwright.ui.theme.Appearance;
import org.moultwright.workflow.MemoryBroodBook;

/** The timing of the first invented brood, open, for tests that look at every view. */
public final class TimingPictures {
    private TimingPictures() {}

    public static Parent timing() {
        MemoryBroodBook book = new MemoryBroodBook();
        BroodsViewModel model = new BroodsViewModel(new BroodsDesk(
                new SimpleObjectProperty<>(RoomFixture.room()),
                () -> {},
                InventedWays.in(book),
                InventedBeliefs.in(book),
                InventedWays.NO_PAPER,
                new InlineRunner(),
                InstantSource.fixed(RoomFixture.NOW),
                new DayWords(RoomFixture.ZONE),
                new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY),
                PhotoDesk.none(new InlineRunner(), new DayWords(RoomFixture.ZONE))));
        BroodsView view = new BroodsView(model, new Appearance().paletteProperty());
        model.openTiming();
        return view;
    }
}
