package org.moultwright.ui.round;

import java.lang.reflect.Proxy;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.moultwright.compute.forecast.Composition;
import org.moultwright.compute.forecast.CountInterval;
import org.moultwright.compute.forecast.InstantInterval;
import org.moultwright.compute.forecast.MoultForecast;
import org.moultwright.compute.forecast.TrayForecast;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Check;
import org.moultwright.domain.InstantRange;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Look;
import org.moultwright.domain.Shelf;
import org.moultwright.domain.Stage;
import org.moultwright.domain.TrayContents;
import org.moultwright.task.InlineRunner;
import org.moultwright.task.Runner;
import org.moultwright.text.DayWords;
import org.moultwright.text.Vocabulary;
import org.moultwright.ui.draft.BegunDesk;
import org.moultwright.ui.photo.PhotoDesk;
import org.moultwright.ui.shell.SaveLine;
import org.moultwright.workflow.BroodBook;
import org.moultwright.workflow.BroodView;
import org.moultwright.workflow.MemoryBroodBook;
import org.moultwright.workflow.ReadingSource;
import org.moultwright.workflow.RecordRound;
import org.moultwright.workflow.RoomView;
import org.moultwright.workflow.SheetDraft;
import org.moultwright.workflow.TrayView;
import org.moultwright.workflow.UndoDeed;

/** A room of three invented broods in four trays, one of them late, kept in memory. */
public final class InventedRoom implements SaveLine {
    static final Instant NOW = Instant.parse("2026-05-03T20:41:00Z");

    private static final Instant OPENED = Instant.parse("2026-03-20T18:00:00Z");
    private static final Map<String, String> PLACES =
            Map.of("A1", "box 1, top", "A2", "box 1, base", "B1", "box 2, top", "C1", "box 2, base");

    final MemoryBroodBook memory = new MemoryBroodBook();
    final ReadOnlyObjectWrapper<RoomView> room = new ReadOnlyObjectWrapper<>(RoomView.EMPTY);
    final List<Runnable> undos = new ArrayList<>();
    List<SheetDraft> begun = List.of();
    private final InstantSource clock = InstantSource.fixed(NOW);

    PhotoDesk photos = PhotoDesk.none(new InlineRunner(), new DayWords(ZoneOffset.UTC));

    /** What was said by ear, note by note. */
    final HeardTally heard = new HeardTally();

    InventedRoom() {
        brood("CC-26-A", Map.of("A1", counts(0, 0, 34, 22, 0), "A2", counts(0, 0, 22, 28, 0)), 1);
        brood("CC-26-B", Map.of("B1", counts(0, 0, 59, 0, 0)), 5);
        brood("CC-26-C", Map.of("C1", counts(0, 57, 8, 0, 0)), 1);
        readAgain();
    }

    /** The desk over this room; sheets go into {@code book}. */
    RoundDesk desk(BroodBook book) {
        return desk(book, new InlineRunner());
    }

    RoundDesk desk(BroodBook book, Runner runner) {
        return new RoundDesk(
                room.getReadOnlyProperty(),
                this::readAgain,
                new RecordRound(book, clock, UUID::randomUUID),
                new UndoDeed(book, clock, UUID::randomUUID),
                runner,
                this,
                clock,
                new DayWords(ZoneOffset.UTC),
                new ReadOnlyObjectWrapper<>(Vocabulary.ENGLISH_HOBBY),
                new BegunDesk<>(begun, kept -> begun = kept, new InlineRunner()),
                heard,
                photos);
    }

    RoundDesk desk() {
        return desk(memory);
    }

    /** This room's book on a disk that takes nothing more. */
    BroodBook fullDisk() {
        return (BroodBook) Proxy.newProxyInstance(
                BroodBook.class.getClassLoader(), new Class<?>[] {BroodBook.class}, (book, method, arguments) -> {
                    if (method.getName().equals("keep")) {
                        throw new IllegalStateException("the disk is full.");
                    }
                    return method.invoke(memory, arguments);
                });
    }

    BroodRecord record(String code) {
        return memory.find(code).orElseThrow();
    }

    Check lastCheck(String code) {
        List<Check> checks = record(code).checks();
        return checks.get(checks.size() - 1);
    }

    @Override
    public void saved(Instant at, Runnable undo) {
        undos.add(undo);
    }

    void readAgain() {
        room.set(read(false));
    }

    /** As it is shown before its dates are worked out. */
    void readAtAGlance() {
        room.set(read(true));
    }

    private RoomView read(boolean awaitsDates) {
        return new RoomView(
                NOW,
                memory.broods().stream()
                        .map(brood -> view(record(brood.code())))
                        .toList(),
                Map.of(),
                Optional.empty(),
                Map.of(),
                new Shelf(List.of()),
                awaitsDates);
    }

    private BroodView view(BroodRecord record) {
        List<TrayView> trays = record.ledger().balances().keySet().stream()
                .filter(Account::isTray)
                .map(Account::code)
                .sorted()
                .map(tray -> tray(record, tray))
                .toList();
        return new BroodView(record, trays, Optional.empty());
    }

    private TrayView tray(BroodRecord record, String tray) {
        Optional<Check> last = record.checks().stream()
                .filter(check -> check.tray().equals(tray))
                .reduce((earlier, later) -> later);
        Duration since = Duration.between(last.map(Check::at).orElse(OPENED), NOW);
        TrayView.Due due = since.compareTo(Duration.ofHours(12)) < 0
                ? TrayView.Due.DONE
                : since.toDays() > 2 ? TrayView.Due.LATE : TrayView.Due.DUE;
        int alive = record.ledger().balance(Account.tray(tray));
        return new TrayView(
                record.brood().code(),
                tray,
                PLACES.getOrDefault(tray, ""),
                alive,
                TrayContents.at(NOW, tray, record.ledger(), record.checks()).byStage(),
                last,
                due,
                tray.startsWith("C") ? Optional.empty() : Optional.of(forecast(tray, alive)));
    }

    private static TrayForecast forecast(String tray, int alive) {
        Map<Stage, CountInterval> byStage = Map.of(
                Stage.EGG, interval(0, 0),
                Stage.POSTEMBRYO, interval(0, 0),
                Stage.INSTAR1, interval(alive - 15, alive - 3),
                Stage.DARKENED, interval(3, 15),
                Stage.INSTAR2, interval(0, 0));
        InstantInterval first = days(6, 8, 11);
        return new TrayForecast(
                tray,
                56.1,
                alive,
                List.of(new MoultForecast(Stage.INSTAR2, 0, first, days(8, 10, 13), days(11, 14, 18))),
                List.of(new Composition(NOW, byStage, interval(alive, alive))));
    }

    private static InstantInterval days(int p10, int p50, int p90) {
        return new InstantInterval(
                NOW.plus(Duration.ofDays(p10)), NOW.plus(Duration.ofDays(p50)), NOW.plus(Duration.ofDays(p90)));
    }

    private static CountInterval interval(double p10, double p90) {
        return new CountInterval(p10, (p10 + p90) / 2, p90);
    }

    private static Map<Stage, Integer> counts(int egg, int postembryo, int instar1, int darkened, int instar2) {
        Map<Stage, Integer> counts = new LinkedHashMap<>();
        counts.put(Stage.EGG, egg);
        counts.put(Stage.POSTEMBRYO, postembryo);
        counts.put(Stage.INSTAR1, instar1);
        counts.put(Stage.DARKENED, darkened);
        counts.put(Stage.INSTAR2, instar2);
        return counts;
    }

    private void brood(String code, Map<String, Map<Stage, Integer>> trays, int daysSinceLook) {
        List<LedgerEntry> entries = new ArrayList<>();
        List<Check> checks = new ArrayList<>();
        trays.forEach((tray, counts) -> {
            int all = counts.values().stream().mapToInt(Integer::intValue).sum();
            entries.add(LedgerEntry.of(
                    UUID.randomUUID(), OPENED, Account.SAC, Account.tray(tray), Stage.EGG, all, Cause.OPENED));
            Map<Stage, Look> looks = new LinkedHashMap<>();
            counts.forEach((stage, count) -> looks.put(stage, new Look.Full(count)));
            checks.add(new Check(UUID.randomUUID(), tray, NOW.minus(Duration.ofDays(daysSinceLook)), looks));
        });
        Brood brood = new Brood(
                code,
                "Chromatopelma cyaneopubescens",
                ZoneOffset.UTC,
                Optional.of(new InstantRange(NOW.minus(Duration.ofDays(61)), NOW.minus(Duration.ofDays(60)))),
                Optional.of(OPENED),
                List.of(Stage.values()),
                27,
                Optional.empty());
        BroodRecord empty = BroodRecord.of(brood);
        memory.takeIn(
                new BroodRecord(
                        brood,
                        Ledger.of(entries),
                        checks,
                        empty.stays(),
                        empty.probeStays(),
                        empty.setPoints(),
                        Map.of(),
                        empty.mould(),
                        empty.care(),
                        empty.pots(),
                        empty.runUp()),
                ReadingSource.of(empty));
    }
}
