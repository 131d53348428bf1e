package org.moultwright.ui.takealong;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.layout.StackPane;
import org.moultwright.document.IcsCalendarFiles;
import org.moultwright.document.PdfSitterSheets;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.RoomFixture;
import org.moultwright.ui.alarm.InventedWatch;
import org.moultwright.ui.plan.ChosenPlans;
import org.moultwright.ui.plan.PlanChoices;
import org.moultwright.ui.shell.ShellViewModel;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.MemoryBroodBook;
import org.moultwright.workflow.MemoryMark;
import org.moultwright.workflow.RecordRound;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.SitterDeeds;
import org.moultwright.workflow.SitterMode;
import org.moultwright.workflow.UndoDeed;

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
        return new TakeAlongView(model, sitter(RoomFixture.room(), plans), () -> {});
    }

    /** Nothing there yet. */
    public static Parent empty() {
        return view(desk(RoomView.EMPTY, ChosenPlans.usual(), Path.of("unused")));
    }

    /** The desk in a sitter's hands, a number to call written, and the question whether the keeper is back. */
    public static Parent sitting() {
        PlanChoices plans = ChosenPlans.usual();
        plans.keep(plans.settings().withPhone("+351 000 000 000"));
        SitterViewModel sitter = sitter(RoomFixture.room(), plans);
        sitter.handOver();
        SitterView view = new SitterView(sitter);
        ((Button) view.lookup(".sitter-keeper")).fire();
        return new StackPane(view);
    }

    /** The same where nothing is to be looked after and nobody to call. */
    public static Parent sittingInAnEmptyRoom() {
        SitterViewModel sitter = sitter(RoomView.EMPTY, ChosenPlans.usual());
        sitter.handOver();
        return new StackPane(new SitterView(sitter));
    }

    static SitterViewModel sitter(RoomView room, PlanChoices plans) {
        BroodBook book = new MemoryBroodBook();
        return new SitterViewModel(new SitterDesk(
                new SimpleObjectProperty<>(room),
                () -> {},
                new SitterMode(new MemoryMark(), () -> RoomFixture.NOW),
                new SitterDeeds(new RecordRound(book, () -> RoomFixture.NOW, UUID::randomUUID), () -> RoomFixture.NOW),
                new UndoDeed(book, () -> RoomFixture.NOW, UUID::randomUUID),
                book,
                plans,
                new InventedWatch().model,
                new InlineRunner(),
                new ShellViewModel(new DayWords(RoomFixture.ZONE)),
                () -> RoomFixture.NOW,
                new DayWords(RoomFixture.ZONE),
                new SimpleObjectProperty<>(Vocabulary.ENGLISH_HOBBY)));
    }

    private static Parent view(TakeAlongDesk desk) {
        return new TakeAlongView(
                new TakeAlongViewModel(desk), sitter(desk.room().get(), desk.plans()), () -> {});
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
