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
import org.moultwright.task.InlineRunner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
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
    static final Instant NOW = Instant.parse("2026-05-05T20:41:00Z");

    final DrawnSheets paperPrinter = new DrawnSheets();
    private final BroodBook book;
    final List<Runnable> undos = new ArrayList<>();
    private final ReadOnlyObjectWrapper<RoomView> room = new ReadOnlyObjectWrapper<>(RoomView.EMPTY);
    private final InstantSource clock = InstantSource.fixed(NOW);

    /** So many animals of A1 and of A2 are slings by the last look. */
    InventedTrays(BroodBook book, int slingsOfA1, int slingsOfA2) {
        this.book = book;
        Brood brood = new Brood(
                BROOD,
                "Chromatopelma cyaneopubescens",
                ZoneOffset.UTC,
                Optional.empty(),
                Optional.of(NOW.minus(Duration.ofDays(40))),
                List.of(Stage.values()),
                27,
                Optional.empty());
        BroodRecord empty = BroodRecord.of(brood);
        book.takeIn(empty, ReadingSource.of(empty));
        fill("A1", 34, 22, slingsOfA1);
        fill("A2", 39, 0, slingsOfA2);
        readAgain();
    }

    PottingDesk desk(LabelPrinter printer, Path pdf) {
        return new PottingDesk(
                room.getReadOnlyProperty(),
                this::readAgain,
                new PotSlings(book, clock, UUID::randomUUID),
                new UndoDeed(book, clock, UUID::randomUUID),
                printer,
                proposedName -> Optional.of(pdf),
                paperPrinter,
                new InlineRunner(),
                this,
                clock,
                new DayWords(ZoneOffset.UTC),
                new ReadOnlyObjectWrapper<>(Vocabulary.ENGLISH_HOBBY));
    }

    BroodRecord record() {
        return book.find(BROOD).orElseThrow();
    }

    int balance(Account account) {
        return record().ledger().balance(account);
    }

    @Override
    public void saved(Instant at, Runnable undo) {
        undos.add(undo);
    }

    private void fill(String tray, int nymphs, int dark, int slings) {
        Instant opened = NOW.minus(Duration.ofDays(40));
        int all = nymphs + slings;
        Map<Stage, Look> looks = Map.of(
                Stage.INSTAR1, new Look.Full(nymphs - dark),
                Stage.DARKENED, new Look.Full(dark),
                Stage.INSTAR2, new Look.Full(slings));
        book.keep(new Deed(
                new Deed.Summary(UUID.randomUUID(), BROOD, opened, tray + " filled"),
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
                NOW,
                List.of(new BroodView(record(), List.of(tray("A1"), tray("A2")), Optional.empty())),
                Map.of(),
                Optional.empty()));
    }

    private TrayView tray(String tray) {
        BroodRecord record = record();
        return new TrayView(
                BROOD,
                tray,
                tray.equals("A1") ? "box 1, top" : "box 1, base",
                balance(Account.tray(tray)),
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
