package org.moultwright.workflow;

import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.CareNote;
import org.moultwright.domain.Cause;
import org.moultwright.domain.Check;
import org.moultwright.domain.Ledger;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Look;
import org.moultwright.domain.MouldNote;
import org.moultwright.domain.Require;
import org.moultwright.domain.Stage;
import org.moultwright.language.Texts;

/** Writes one tray's sheet into the book: the look itself, what was taken out, what the balance asks for. */
public final class RecordRound {
    private final BroodBook book;
    private final InstantSource clock;
    private final Supplier<UUID> ids;

    public RecordRound(BroodBook book, InstantSource clock, Supplier<UUID> ids) {
        this.book = book;
        this.clock = clock;
        this.ids = ids;
    }

    /** The balance of a sheet against a brood's ledger as it stands at the sheet's instant. */
    public static Balance balance(Ledger ledger, RoundSheet sheet) {
        int expected = ledger.at(sheet.at()).balance(Account.tray(sheet.tray()));
        return new Balance(expected, sheet.counted(), sheet.taken());
    }

    /**
     * Keeps a sheet; it is on disk when this returns.
     *
     * @param answer what explains the balance, needed exactly where it does not hold
     * @throws IllegalArgumentException if the brood is unknown, the balance does not hold and no answer is
     *     given, or the answer does not fit
     */
    public Deed.Summary save(RoundSheet sheet, Optional<Balance.Answer> answer) {
        BroodRecord record = book.find(sheet.brood())
                .orElseThrow(() -> new IllegalArgumentException("brood '" + sheet.brood() + "' is not in the book"));
        Balance balance = balance(record.ledger(), sheet);
        Require.that(
                balance.holds() || answer.isPresent(),
                Texts.say("{0} animals of tray '{1}' are unexplained", balance.unexplained(), sheet.tray()));
        List<LedgerEntry> entries = new ArrayList<>();
        answer.filter(given -> !balance.holds())
                .ifPresent(given -> entries.add(explanation(sheet, record, balance.unexplained(), given)));
        sheet.losses().forEach(loss -> entries.add(taken(sheet, loss)));
        Deed.Summary summary =
                new Deed.Summary(ids.get(), sheet.brood(), clock.instant(), Texts.say("{0} looked at", sheet.tray()));
        book.keep(new Deed(
                summary,
                Optional.empty(),
                new Deed.Content(entries, checks(sheet), mould(sheet), care(sheet), List.of())));
        return summary;
    }

    private LedgerEntry taken(RoundSheet sheet, RoundSheet.Loss loss) {
        Account to = loss.cause().equals(Cause.INFERTILE) ? Account.INFERTILE : Account.DEAD;
        return LedgerEntry.of(
                ids.get(), sheet.at(), Account.tray(sheet.tray()), to, loss.stage(), loss.count(), loss.cause());
    }

    private LedgerEntry explanation(RoundSheet sheet, BroodRecord record, int unexplained, Balance.Answer answer) {
        Require.that(
                unexplained > 0 || answer == Balance.Answer.EARLIER_MISCOUNT,
                -unexplained + " animals more than expected cannot be gone");
        Account tray = Account.tray(sheet.tray());
        Stage stage = commonestStage(sheet, record);
        if (answer == Balance.Answer.GONE) {
            return entry(sheet.at(), tray, Account.MISSING, stage, unexplained, Cause.EATEN_OR_LOST);
        }
        return unexplained > 0
                ? entry(sheet.at(), tray, Account.SAC, stage, unexplained, Cause.EARLIER_MISCOUNT)
                : entry(sheet.at(), Account.SAC, tray, stage, -unexplained, Cause.EARLIER_MISCOUNT);
    }

    private LedgerEntry entry(Instant at, Account from, Account to, Stage stage, int count, Cause cause) {
        return LedgerEntry.of(ids.get(), at, from, to, stage, count, cause);
    }

    /** Nobody saw in which stage the unexplained animals were: the commonest one counted tonight stands in. */
    private static Stage commonestStage(RoundSheet sheet, BroodRecord record) {
        return sheet.looks().entrySet().stream()
                .filter(look -> look.getValue() instanceof Look.Full)
                .max(Comparator.<Map.Entry<Stage, Look>>comparingInt(look -> ((Look.Full) look.getValue()).count())
                        .thenComparing(Map.Entry::getKey))
                .map(Map.Entry::getKey)
                .orElse(record.brood().stages().get(0));
    }

    private List<Check> checks(RoundSheet sheet) {
        Check check = new Check(ids.get(), sheet.tray(), sheet.at(), sheet.looks());
        return check.looks().isEmpty() ? List.of() : List.of(check);
    }

    private List<MouldNote> mould(RoundSheet sheet) {
        int lost = sheet.losses().stream()
                .filter(loss -> loss.cause().equals(Cause.MOULD))
                .mapToInt(RoundSheet.Loss::count)
                .sum();
        return sheet
                .mould()
                .map(found -> new MouldNote(
                        ids.get(), sheet.at(), sheet.tray(), found.where(), found.extent(), found.action(), lost))
                .stream()
                .toList();
    }

    private List<CareNote> care(RoundSheet sheet) {
        List<CareNote> notes = new ArrayList<>();
        sheet.care().stream()
                .sorted()
                .forEach(what -> notes.add(new CareNote(ids.get(), sheet.at(), sheet.tray(), what, "")));
        if (!sheet.note().isBlank()) {
            notes.add(new CareNote(ids.get(), sheet.at(), sheet.tray(), CareNote.NOTED, sheet.note()));
        }
        return notes;
    }
}
