package org.moultwright.exchange;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.moultwright.domain.Account;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.exchange.TableReader.Placed;
import org.moultwright.language.Texts;

/**
 * What must hold of the accounts of moves: each is one of the fixed ones or a tray, so that a mistyped
 * {@code dead} does not become a tray full of living animals.
 *
 * <p>A tray is known by a row of any other file, or by animals that went in as well as out. Where no file
 * tells of containers, any word may be a tray's but another spelling of a fixed account.
 */
final class AccountChecks {
    private static final String EXPECTED =
            Texts.say("sac, dead, infertile, missing, potted, handed-over, or a tray that another row tells of");
    private static final Set<String> FIXED = Stream.of(
                    Account.SAC, Account.DEAD, Account.INFERTILE, Account.MISSING, Account.POTTED, Account.HANDED_OVER)
            .map(Account::code)
            .collect(Collectors.toSet());

    private final Problems problems;
    private List<Placed<LedgerEntry>> moves = List.of();

    AccountChecks(Problems problems) {
        this.problems = problems;
    }

    void moves(List<Placed<LedgerEntry>> rows) {
        this.moves = rows;
    }

    /** Tells of every move from or to a word that can be no account. */
    void refuseUnknown(BroodRows rows) {
        Set<String> known = placesOf(rows);
        Set<Account> entered = new HashSet<>();
        Set<Account> left = new HashSet<>();
        moves.forEach(move -> {
            entered.add(move.value().to());
            left.add(move.value().from());
        });
        boolean anyWord = rows.stays().isEmpty();
        for (Placed<LedgerEntry> move : moves) {
            Stream.of("from", "to").forEach(column -> {
                Account account = column.equals("from")
                        ? move.value().from()
                        : move.value().to();
                boolean used = anyWord || (entered.contains(account) && left.contains(account));
                boolean sound = !account.isTray()
                        || known.contains(account.code())
                        || (used && !isSpellingOfFixed(account.code()));
                if (!sound) {
                    problems.add(AnimalTables.MOVES_FILE, move.line(), column, account.code(), EXPECTED);
                }
            });
        }
    }

    private static Set<String> placesOf(BroodRows rows) {
        return Stream.of(
                        rows.stays().stream().map(stay -> stay.container()),
                        rows.checks().stream().map(check -> check.tray()),
                        rows.mould().stream().map(note -> note.tray()),
                        rows.care().stream().map(note -> note.tray()),
                        rows.pots().stream().map(pot -> pot.tray()))
                .flatMap(codes -> codes)
                .collect(Collectors.toSet());
    }

    private static boolean isSpellingOfFixed(String code) {
        return FIXED.contains(code.strip().toLowerCase(Locale.ROOT).replaceAll("[ _-]+", "-"));
    }
}
