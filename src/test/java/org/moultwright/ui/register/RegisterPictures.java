package org.moultwright.ui.register;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.Parent;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.label.LabelDesign;
import org.moultwright.domain.label.LabelSheets;
import org.moultwright.domain.label.Paper;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.label.DesignChoice;
import org.moultwright.ui.label.LabelsViewModel;
import org.moultwright.ui.label.NoPrinter;
import org.moultwright.ui.label.SheetDimension;
import org.moultwright.ui.shell.SaveLine;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.HandOverSlip;
import org.moultwright.workflow.InventedPots;
import org.moultwright.workflow.MemoryBroodBook;
import org.moultwright.workflow.PotLabel;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TendPots;
import org.moultwright.workflow.UndoDeed;

/** The register over two invented broods in states worth looking at. */
public final class RegisterPictures {
    private static final Instant NOW = InventedPots.NOW;

    final MemoryBroodBook book = new MemoryBroodBook();
    final RegisterDesk desk;
    final RegisterViewModel model;
    Optional<HandOverSlip> lastSlip = Optional.empty();
    private final ReadOnlyObjectWrapper<RoomView> room = new ReadOnlyObjectWrapper<>(RoomView.EMPTY);

    RegisterPictures() {
        Stream.of(InventedPots.lived("CC-26-A", "26A", 30), InventedPots.lived("PR-26-R", "26R", 12))
                .forEach(record -> book.takeIn(record, ReadingSource.of(record)));
        readAgain();
        this.desk = desk(this::readAgain, (at, undo) -> {});
        this.model = new RegisterViewModel(desk);
    }

    /** The register over a room that is not read again; what takes a deed back goes to {@code undos}. */
    RegisterViewModel waiting(List<Runnable> undos) {
        return new RegisterViewModel(desk(() -> {}, (at, undo) -> undos.add(undo)));
    }

    private RegisterDesk desk(Runnable readAgain, SaveLine saveLine) {
        return new RegisterDesk(
                room.getReadOnlyProperty(),
                readAgain,
                new TendPots(book, () -> NOW, UUID::randomUUID),
                new UndoDeed(book, () -> NOW, UUID::randomUUID),
                (slip, pdf) -> lastSlip = Optional.of(slip),
                name -> Optional.of(Path.of(name)),
                NoPrinter.desk(),
                new DesignChoice(() -> LabelDesign.STANDARD, design -> {}),
                Paper.LETTER,
                new InlineRunner(),
                saveLine,
                () -> NOW,
                new DayWords(ZoneOffset.UTC),
                new ReadOnlyObjectWrapper<>(Vocabulary.ENGLISH_HOBBY));
    }

    /** Five pots scanned, the last of them dead. */
    public static Parent selected() {
        RegisterPictures register = new RegisterPictures();
        Stream.of(2, 3, 4, 5, 10).forEach(number -> register.model.scan(InventedPots.codeOf("26A", number)));
        return new RegisterView(register.model, () -> {}, () -> {});
    }

    /** A code misread, the filter finding nothing. */
    public static Parent misread() {
        RegisterPictures register = new RegisterPictures();
        register.model.filterTextProperty().set("300 ml");
        RegisterView view = new RegisterView(register.model, () -> {}, () -> {});
        register.model.scan("26A-001-Z");
        return view;
    }

    /** A slip for seven pots of two broods. */
    public static Parent slip() {
        RegisterPictures register = new RegisterPictures();
        Stream.of(1, 2, 3, 4, 10).forEach(number -> register.model.scan(InventedPots.codeOf("26A", number)));
        Stream.of(1, 2, 3).forEach(number -> register.model.scan(InventedPots.codeOf("26R", number)));
        SlipViewModel slip = new SlipViewModel(register.desk, register.model);
        slip.begin(register.model.concerned());
        slip.fromProperty().set("An invented keeper\nInvented Lane 1");
        return new SlipView(slip, () -> {});
    }

    /** Labels again, on a sheet for round lids that was begun. */
    public static Parent labels() {
        RegisterPictures register = new RegisterPictures();
        Stream.of(1, 2, 3, 4, 5, 6, 7).forEach(number -> register.model.scan(InventedPots.codeOf("26A", number)));
        LabelsViewModel labels = new LabelsViewModel(register.desk.labels(), register.desk.clock());
        labels.form().sheetProperty().set(LabelSheets.find("a4-4x6-round40").orElseThrow());
        labels.form().firstCellProperty().set(OptionalInt.of(3));
        labels.begin(register.wanted());
        return RegisterPages.again(labels, () -> {});
    }

    /** Labels again, on a sheet of the keeper's own that is larger than its page; and no printer. */
    public static Parent labelsRefused() {
        RegisterPictures register = new RegisterPictures();
        register.model.scan(InventedPots.codeOf("26A", 1));
        LabelsViewModel labels = new LabelsViewModel(register.desk.labels(), register.desk.clock());
        labels.begin(register.wanted());
        labels.print();
        labels.form().own().usedProperty().set(true);
        labels.form().own().textProperty(SheetDimension.PAGE_WIDTH).set("150");
        return RegisterPages.again(labels, () -> {});
    }

    private List<PotLabel> wanted() {
        return model.concerned().stream()
                .map(row -> row.label(LabelDesign.STANDARD, desk.days()))
                .toList();
    }

    private void readAgain() {
        List<BroodView> broods = book.broods().stream()
                .map(brood -> {
                    BroodRecord record = book.find(brood.code()).orElseThrow();
                    return new BroodView(record, List.of(), Optional.empty());
                })
                .toList();
        room.set(new RoomView(NOW, broods, Map.of(), Optional.empty()));
    }
}
