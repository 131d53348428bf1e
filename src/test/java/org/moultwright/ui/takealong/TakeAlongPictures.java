package org.moultwright.ui.takealong;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Parent;
import org.moultwright.document.IcsCalendarFiles;
import org.moultwright.document.PdfSitterSheets;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.plan.ChosenPlans;
import org.moultwright.ui.plan.PlanChoices;
import org.moultwright.workflow.RoomView;

/** The page of what is taken along, in states worth looking at. */
public final class TakeAlongPictures {
    private TakeAlongPictures() {}

    /** Days away written, all can be saved. */
    public static Parent planned() {
        PlanChoices plans = ChosenPlans.usual();
        plans.awayFromProperty().set(LocalDate.of(2026, 5, 9));
        plans.awayToProperty().set(LocalDate.of(2026, 5, 16));
        return view(desk(RoomFixture.room(), plans, Path.of("unused")));
    }

    /** The days in the wrong order, and a file that could not be written. */
    public static Parent refused() {
        PlanChoices plans = ChosenPlans.usual();
        TakeAlongViewModel model =
                new TakeAlongViewModel(desk(RoomFixture.room(), plans, Path.of("no-such-folder", "moultwright.ics")));
        model.saveCalendar();
        plans.awayFromProperty().set(LocalDate.of(2026, 5, 16));
        plans.awayToProperty().set(LocalDate.of(2026, 5, 9));
        return new TakeAlongView(model, () -> {});
    }

    /** Nothing there yet. */
    public static Parent empty() {
        return view(desk(RoomView.EMPTY, ChosenPlans.usual(), Path.of("unused")));
    }

    private static Parent view(TakeAlongDesk desk) {
        return new TakeAlongView(new TakeAlongViewModel(desk), () -> {});
    }

    static TakeAlongDesk desk(RoomView room, PlanChoices plans, Path file) {
        return new TakeAlongDesk(
                new SimpleObjectProperty<>(room),
                plans,
                new IcsCalendarFiles(),
                proposed -> Optional.of(file),
                new PdfSitterSheets(),
                proposed -> Optional.of(file),
                new InlineRunner(),
                () -> RoomFixture.NOW,
                new DayWords(RoomFixture.ZONE),
                new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY));
    }
}
