package org.moultwright.exchange;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.moultwright.domain.Account;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Check;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Look;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;

/** The tables of animals in trays: what was seen, and where they went. */
final class AnimalTables {
    static final String STAGES = Texts.say("egg, postembryo, instar1, darkened or instar2");

    private static final String CHECKS_FILE = "checks.csv";
    /** The column that is written only where some move has a note. */
    static final String NOTE = "note";

    static final String MOVES_FILE = "moves.csv";

    static final Table<LookRow> CHECKS = new Table<>(
            CHECKS_FILE,
            List.of("time", "tray", "stage", "how", "count", "of"),
            List.of("time", "tray", "stage", "how"),
            LookRow::at,
            row -> new LookRow(
                    row.instant("time"), tray(row, "tray"), row.oneOf("stage", STAGES, Stage::fromKey), look(row)),
            AnimalTables::cells);

    private AnimalTables() {}

    static Table<LedgerEntry> moves(RowIds ids) {
        return new Table<>(
                MOVES_FILE,
                List.of("time", "from", "to", "stage", "count", "cause", NOTE),
                List.of("time", "from", "to", "stage", "count"),
                LedgerEntry::at,
                row -> move(row, ids),
                entry -> List.of(
                        Cell.instant(entry.at()),
                        Cell.text(entry.from().code()),
                        Cell.text(entry.to().code()),
                        entry.stage().key(),
                        String.valueOf(entry.count()),
                        Cell.text(entry.cause().words()),
                        Cell.text(entry.note())));
    }

    /** The rows of a check. */
    static List<LookRow> rows(Check check) {
        return check.looks().entrySet().stream()
                .map(look -> new LookRow(check.at(), check.tray(), look.getKey(), look.getValue()))
                .toList();
    }

    static Check check(Instant at, String tray, Map<Stage, Look> looks, RowIds ids) {
        return new Check(ids.of(CHECKS_FILE, at, tray), tray, at, looks);
    }

    private static LedgerEntry move(Row row, RowIds ids) throws Row.Unusable {
        Instant at = row.instant("time");
        Account from = Account.fromCode(row.required("from"));
        Account to = Account.fromCode(row.required("to"));
        Stage stage = row.oneOf("stage", STAGES, Stage::fromKey);
        int count = row.count("count", 1);
        if (from.equals(to)) {
            throw row.refuse("to", Texts.say("another account than in 'from'"));
        }
        Cause cause = new Cause(row.optional("cause").orElse(Cause.UNKNOWN.words()));
        String note = row.text(NOTE);
        return note.isEmpty()
                ? entry(at, from, to, stage, count, cause, ids)
                : new LedgerEntry(
                        ids.of(MOVES_FILE, at, from.code(), to.code(), stage.key(), count, cause.words(), note),
                        at,
                        from,
                        to,
                        stage,
                        count,
                        cause,
                        note,
                        Optional.empty());
    }

    /** An entry named by what stands in its row. */
    static LedgerEntry entry(Instant at, Account from, Account to, Stage stage, int count, Cause cause, RowIds ids) {
        UUID id = ids.of(MOVES_FILE, at, from.code(), to.code(), stage.key(), count, cause.words());
        return LedgerEntry.of(id, at, from, to, stage, count, cause);
    }

    static String tray(Row row, String column) throws Row.Unusable {
        String code = row.required(column);
        if (!Account.fromCode(code).isTray()) {
            throw row.refuse(column, Texts.say("a tray, not an account's name"));
        }
        return code;
    }

    private static Look look(Row row) throws Row.Unusable {
        return switch (row.text("how")) {
            case "full" -> new Look.Full(row.count("count", 0));
            case "sample" -> sample(row);
            case "seen" -> new Look.Seen();
            case "none" -> new Look.None();
            default -> throw row.refuse("how", Texts.say("full, sample, seen or none"));
        };
    }

    private static Look sample(Row row) throws Row.Unusable {
        int count = row.count("count", 0);
        return new Look.Sample(count, row.count("of", Math.max(1, count)));
    }

    private static List<String> cells(LookRow row) {
        Look look = row.look();
        Optional<Integer> count = Optional.empty();
        Optional<Integer> of = Optional.empty();
        if (look instanceof Look.Full full) {
            count = Optional.of(full.count());
        } else if (look instanceof Look.Sample sample) {
            count = Optional.of(sample.count());
            of = Optional.of(sample.of());
        }
        return List.of(
                Cell.instant(row.at()),
                Cell.text(row.tray()),
                row.stage().key(),
                look.key(),
                Cell.optional(count),
                Cell.optional(of));
    }

    /** What was seen of one stage at one look. */
    record LookRow(Instant at, String tray, Stage stage, Look look) {}
}
