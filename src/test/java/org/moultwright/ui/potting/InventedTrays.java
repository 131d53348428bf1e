package org.moultwright.ui.potting;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.forecast.TrayForecast;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Check;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Look;
import org.moultwright.domain.Stage;
import org.moultwright.domain.TrayContents;
import org.moultwright.domain.code.CodePattern;
import org.moultwright.domain.label.LabelDesign;
import org.moultwright.domain.label.LabelStack;
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.label.DesignChoice;
import org.moultwright.ui.label.StackChoice;
import org.moultwright.ui.shell.SaveLine;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.Deed;
import org.moultwright.workflow.LabelPrinter;
import org.moultwright.workflow.PotSlings;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.TrayView;
import org.moultwright.workflow.UndoDeed;

/** An invented brood of two trays, some of its animals slings, in a book that does not know it yet. */
final class InventedTrays implements SaveLine {
    static final String BROOD = "CC-26-A";
    static final String SECOND = "CC-26-B";
    static final Instant NOW = Instant.parse("2026-05-05T20:41:00Z");

    final DrawnSheets paperPrinter = new DrawnSheets();
    final List<CodePattern> settled = new ArrayList<>();
    final List<LabelDesign> designs = new ArrayList<>();
    final List<LabelStack> stacks = new ArrayList<>();
    boolean areNamedAsProposed;
    private final BroodBook book;
    final List<Runnable> undos = new ArrayList<>();
    private final ReadOnlyObjectWrapper<RoomView> room = new ReadOnlyObjectWrapper<>(RoomView.EMPTY);
    private final InstantSource clock = InstantSource.fixed(NOW);

    /** So many animals of A1 and of A2 are slings by the last look. */
    InventedTrays(BroodBook book, int slingsOfA1, int slingsOfA2) {
        this(book, slingsOfA1, slingsOfA2, 0);
    }

    /** The same, and so many of B1 of another brood. */
    InventedTrays(BroodBook book, int slingsOfA1, int slingsOfA2, int slingsOfB1) {
        this.book = book;
        begin(BROOD);
        fill(BROOD, "A1", 34, 22, slingsOfA1);
        fill(BROOD, "A2", 39, 0, slingsOfA2);
        if (slingsOfB1 > 0) {
            begin(SECOND);
            fill(SECOND, "B1", 18, 4, slingsOfB1);
        }
        readAgain();
    }

    private void begin(String code) {
        Brood brood = new Brood(
                code,
                "Chromatopelma cyaneopubescens",
                ZoneOffset.UTC,
                Optional.empty(),
                Optional.of(NOW.minus(Duration.ofDays(40))),
                List.of(Stage.values()),
                27,
                Optional.empty());
        BroodRecord empty = BroodRecord.of(brood);
        book.takeIn(empty, ReadingSource.of(empty));
    }

    PottingDesk desk(LabelPrinter printer, Path pdf) {
        return new PottingDesk(
                room.getReadOnlyProperty(),
                this::readAgain,
                new PotSlings(book, clock, UUID::randomUUID),
                new UndoDeed(book, clock, UUID::randomUUID),
                new PatternChoice(CodePattern.STANDARD, settled::add),
                new DesignChoice(() -> LabelDesign.STANDARD, designs::add),
                printer,
                name -> Optional.of(areNamedAsProposed ? pdf.resolveSibling(name) : pdf),
                paperPrinter,
                new StackChoice(() -> stacks.isEmpty() ? LabelStack.NEW : stacks.get(stacks.size() - 1), stacks::add),
                new InlineRunner(),
                this,
                clock,
                new DayWords(ZoneOffset.UTC),
                new ReadOnlyObjectWrapper<>(Vocabulary.ENGLISH_HOBBY));
    }

    BroodRecord record() {
        return record(BROOD);
    }

    BroodRecord record(String brood) {
        return book.find(brood).orElseThrow();
    }

    int balance(Account account) {
        return record().ledger().balance(account);
    }

    @Override
    public void saved(Instant at, Runnable undo) {
        undos.add(undo);
    }

    private void fill(String brood, String tray, int nymphs, int dark, int slings) {
        Instant opened = NOW.minus(Duration.ofDays(40));
        int all = nymphs + slings;
        Map<Stage, Look> looks = Map.of(
                Stage.INSTAR1, new Look.Full(nymphs - dark),
                Stage.DARKENED, new Look.Full(dark),
                Stage.INSTAR2, new Look.Full(slings));
        book.keep(new Deed(
                new Deed.Summary(UUID.randomUUID(), brood, opened, tray + " filled"),
                Optional.empty(),
                new Deed.Content(
                        List.of(LedgerEntry.of(
                                UUID.randomUUID(),
                                opened,
                                Account.SAC,
                                Account.tray(tray),
                                Stage.EGG,
                                all,
                                Cause.OPENED)),
                        List.of(new Check(UUID.randomUUID(), tray, NOW.minus(Duration.ofHours(1)), looks)),
                        List.of(),
                        List.of(),
                        List.of())));
    }

    private void readAgain() {
        room.set(new RoomView(
                NOW, book.broods().stream().map(Brood::code).map(this::view).toList(), Map.of(), Optional.empty()));
    }

    private BroodView view(String brood) {
        List<String> trays = brood.equals(BROOD) ? List.of("A1", "A2") : List.of("B1");
        return new BroodView(
                record(brood), trays.stream().map(tray -> tray(brood, tray)).toList(), Optional.empty());
    }

    private TrayView tray(String brood, String tray) {
        BroodRecord record = record(brood);
        return new TrayView(
                brood,
                tray,
                tray.equals("A1") ? "box 1, top" : "box 1, base",
                record.ledger().balance(Account.tray(tray)),
                TrayContents.at(NOW, tray, record.ledger(), record.checks()).byStage(),
                record.checks().stream()
                        .filter(check -> check.tray().equals(tray))
                        .findFirst(),
                TrayView.Due.DONE,
                Optional.of(forecast(tray)));
    }

    private TrayForecast forecast(String tray) {
        InstantInterval first = new InstantInterval(days(3), days(4), days(6));
        return new TrayForecast(
                tray, 60, 56, List.of(new MoultForecast(Stage.INSTAR2, 0, first, first, first)), List.of());
    }

    private static Instant days(int days) {
        return NOW.plus(Duration.ofDays(days));
    }
}
