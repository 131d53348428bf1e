package org.moultwright.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;
import org.moultwright.demo.DemoCounts.Loss;
import org.moultwright.demo.DemoCounts.Row;
import org.moultwright.domain.Account;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Check;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Look;
import org.moultwright.domain.Stage;

/** One tray of the demo, from its row of counts to looks and ledger entries. */
final class TrayStory {
    private static final Duration COUNT_TO_POTTING = Duration.ofMinutes(30);
    private static final Map<String, LocalDate> LOST_ON_ANOTHER_DAY = Map.of(
            "mould (spread from dead eggs)", LocalDate.parse("2026-03-27"),
            "drowned in condensate", LocalDate.parse("2026-04-08"),
            "cannibalised", LocalDate.parse("2026-05-25"));

    private final DemoBrood.DemoTray tray;
    private final List<Row> rows;
    private final Supplier<UUID> ids;
    private final List<LedgerEntry> entries = new ArrayList<>();
    private final List<Check> checks = new ArrayList<>();

    TrayStory(DemoBrood.DemoTray tray, List<Row> rows, Instant opened, Supplier<UUID> ids) {
        this.tray = tray;
        this.rows = List.copyOf(rows);
        this.ids = ids;
        open(opened);
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            row.losses().forEach(loss -> lose(row, loss));
            Map<Stage, Integer> before = i == 0 ? Map.of() : rows.get(i - 1).alive();
            look(tray.check(row.date()), looks(row, before));
            pot(row);
        }
        if (rows.stream().noneMatch(row -> row.date().equals(tray.darkSeen()))) {
            look(tray.check(tray.darkSeen()), Map.of(Stage.DARKENED, new Look.Seen()));
        }
    }

    List<LedgerEntry> entries() {
        return entries;
    }

    List<Check> checks() {
        return checks;
    }

    /** When the tray was looked at for the last time. */
    Instant lastCheck() {
        return tray.check(rows.get(rows.size() - 1).date());
    }

    /** Pottings in order of time. */
    List<LedgerEntry> pottings() {
        return entries.stream()
                .filter(entry -> entry.to().equals(Account.POTTED))
                .toList();
    }

    /** A miscount: one too few on an evening, found the next, both times taken for the ledger's fault. */
    void miscount(LocalDate evening, Map<Stage, Integer> written, Map<Stage, Integer> nextEvening) {
        Instant wrong = tray.check(evening);
        Instant right = tray.check(evening.plusDays(1));
        entries.add(entry(wrong, account(), Account.SAC, Stage.EGG, 1, Cause.EARLIER_MISCOUNT));
        look(wrong, full(written));
        entries.add(entry(right, Account.SAC, account(), Stage.EGG, 1, Cause.EARLIER_MISCOUNT));
        look(right, full(nextEvening));
    }

    private void open(Instant opened) {
        Map<Stage, Integer> start = new EnumMap<>(rows.get(0).alive());
        rows.get(0).losses().forEach(loss -> start.merge(stage(loss), loss.count(), Integer::sum));
        start.forEach((stage, count) -> {
            if (count > 0) {
                entries.add(entry(opened, Account.SAC, account(), stage, count, Cause.OPENED));
            }
        });
    }

    private void lose(Row row, Loss loss) {
        LocalDate date = LOST_ON_ANOTHER_DAY.getOrDefault(loss.words(), row.date());
        entries.add(entry(tray.check(date), account(), account(loss), stage(loss), loss.count(), cause(loss)));
    }

    private void pot(Row row) {
        if (row.pottedAfterCount() > 0) {
            Instant at = tray.check(row.date()).plus(COUNT_TO_POTTING);
            entries.add(entry(at, account(), Account.POTTED, Stage.INSTAR2, row.pottedAfterCount(), Cause.POTTED));
        }
    }

    private Map<Stage, Look> looks(Row row, Map<Stage, Integer> before) {
        Map<Stage, Integer> counted = new EnumMap<>(row.alive());
        counted.keySet().removeIf(stage -> row.alive().get(stage) + before.getOrDefault(stage, 0) == 0);
        Map<Stage, Look> looks = new EnumMap<>(full(counted));
        boolean nymphs = row.alive().get(Stage.INSTAR1) > 0;
        if (nymphs && !row.date().isBefore(tray.darkSeen())) {
            looks.put(Stage.DARKENED, new Look.Seen());
        } else if (nymphs && row.date().isAfter(tray.darkSeen().minusDays(7))) {
            looks.put(Stage.DARKENED, new Look.None());
        }
        return looks;
    }

    private void look(Instant at, Map<Stage, Look> looks) {
        checks.add(new Check(ids.get(), tray.code(), at, looks));
    }

    private LedgerEntry entry(Instant at, Account from, Account to, Stage stage, int count, Cause cause) {
        return LedgerEntry.of(ids.get(), at, from, to, stage, count, cause);
    }

    private Account account() {
        return Account.tray(tray.code());
    }

    private static Map<Stage, Look> full(Map<Stage, Integer> counts) {
        Map<Stage, Look> looks = new EnumMap<>(Stage.class);
        counts.forEach((stage, count) -> looks.put(stage, new Look.Full(count)));
        return looks;
    }

    private static Account account(Loss loss) {
        return switch (loss.words()) {
            case "infertile/collapsed" -> Account.INFERTILE;
            case "cannibalised" -> Account.MISSING;
            default -> Account.DEAD;
        };
    }

    private static Stage stage(Loss loss) {
        return switch (loss.words()) {
            case "infertile/collapsed", "embryo died", "mould (spread from dead eggs)" -> Stage.EGG;
            case "desiccated/failed", "drowned in condensate" -> Stage.POSTEMBRYO;
            default -> Stage.INSTAR1;
        };
    }

    private static Cause cause(Loss loss) {
        return switch (loss.words()) {
            case "infertile/collapsed" -> Cause.INFERTILE;
            case "desiccated/failed" -> Cause.DESICCATED;
            case "drowned in condensate" -> Cause.DROWNED;
            case "mould (spread from dead eggs)" -> Cause.MOULD;
            case "failed moult" -> Cause.FAILED_MOULT;
            case "cannibalised" -> Cause.EATEN_OR_LOST;
            default -> new Cause(loss.words());
        };
    }
}
