package org.moultwright.domain;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Makes a ledger of rows that were written by hand and need not agree with the counts.
 *
 * <p>Every row is kept. A tray that turns out to hold more animals than were put in, because each whole count
 * from then on says so or because more are taken out than it holds, gets an entry from the sac with the cause
 * {@link Cause#EARLIER_MISCOUNT}. What still does not agree is an open question.
 *
 * @param ledger the rows, and the entries added to them
 * @param added the entries that were added
 * @param questions counts the ledger does not explain, in order of time
 */
public record Reconciliation(Ledger ledger, List<LedgerEntry> added, List<OpenQuestion> questions) {
    public Reconciliation {
        added = List.copyOf(added);
        questions = List.copyOf(questions);
    }

    /**
     * Reconciles the entries of one brood with its checks.
     *
     * @param naming makes the entries that are added
     */
    public static Reconciliation of(List<LedgerEntry> entries, List<Check> checks, Naming naming) {
        List<LedgerEntry> all = new ArrayList<>(entries);
        for (Account tray : trays(entries, checks)) {
            all.addAll(moreThanPutIn(tray, entries, checks, naming));
        }
        for (Account account : accounts(entries)) {
            all.addAll(overdrawn(account, List.copyOf(all), naming));
        }
        Ledger ledger = Ledger.of(all);
        return new Reconciliation(ledger, all.subList(entries.size(), all.size()), questions(ledger, checks));
    }

    /** The whole counts that a ledger does not explain. */
    public static List<OpenQuestion> questions(Ledger ledger, List<Check> checks) {
        return wholeCounts(checks)
                .map(check -> new OpenQuestion(
                        check.tray(),
                        check.at(),
                        ledger.at(check.at()).balance(Account.tray(check.tray())),
                        check.total().orElse(0)))
                .filter(question -> question.expected() != question.counted())
                .toList();
    }

    private static List<LedgerEntry> moreThanPutIn(
            Account tray, List<LedgerEntry> entries, List<Check> checks, Naming naming) {
        List<Check> counts = wholeCounts(checks)
                .filter(check -> check.tray().equals(tray.code()))
                .toList();
        int[] excess = counts.stream()
                .mapToInt(check -> check.total().orElse(0) - balance(tray, entries, check.at()))
                .toArray();
        for (int i = excess.length - 2; i >= 0; i--) {
            excess[i] = Math.min(excess[i], excess[i + 1]);
        }
        List<LedgerEntry> added = new ArrayList<>();
        int addedSoFar = 0;
        for (int i = 0; i < excess.length; i++) {
            if (excess[i] > addedSoFar) {
                Check check = counts.get(i);
                added.add(naming.found(check.at(), tray, lowestCounted(check), excess[i] - addedSoFar));
                addedSoFar = excess[i];
            }
        }
        return added;
    }

    /** Entries for an account out of which more went than was in it. Those of one instant are one event. */
    private static List<LedgerEntry> overdrawn(Account account, List<LedgerEntry> entries, Naming naming) {
        TreeMap<Instant, List<LedgerEntry>> byTime = entries.stream()
                .filter(entry -> entry.effectOn(account) != 0)
                .collect(Collectors.groupingBy(LedgerEntry::at, TreeMap::new, Collectors.toList()));
        List<LedgerEntry> added = new ArrayList<>();
        int held = 0;
        for (Map.Entry<Instant, List<LedgerEntry>> event : byTime.entrySet()) {
            held += event.getValue().stream()
                    .mapToInt(entry -> entry.effectOn(account))
                    .sum();
            if (held < 0) {
                added.add(naming.found(
                        event.getKey(), account, event.getValue().get(0).stage(), -held));
                held = 0;
            }
        }
        return added;
    }

    private static Stage lowestCounted(Check check) {
        return check.looks().keySet().stream()
                .filter(stage -> check.counted(stage).orElse(0) > 0)
                .findFirst()
                .orElse(Stage.EGG);
    }

    private static int balance(Account tray, List<LedgerEntry> entries, Instant at) {
        return entries.stream()
                .filter(entry -> !entry.at().isAfter(at))
                .mapToInt(entry -> entry.effectOn(tray))
                .sum();
    }

    private static List<Account> trays(List<LedgerEntry> entries, List<Check> checks) {
        return Stream.concat(
                        accounts(entries).stream().filter(Account::isTray),
                        checks.stream().map(check -> Account.tray(check.tray())))
                .distinct()
                .toList();
    }

    /** Every account but the sac, which alone may fall below zero. */
    private static List<Account> accounts(List<LedgerEntry> entries) {
        return entries.stream()
                .flatMap(entry -> Stream.of(entry.from(), entry.to()))
                .filter(account -> !account.equals(Account.SAC))
                .distinct()
                .toList();
    }

    private static Stream<Check> wholeCounts(List<Check> checks) {
        return checks.stream().filter(check -> check.total().isPresent()).sorted(Comparator.comparing(Check::at));
    }

    /** Makes the entry from the sac by which animals nobody had put in are accounted for. */
    @FunctionalInterface
    public interface Naming {
        LedgerEntry found(Instant at, Account in, Stage stage, int count);
    }
}
