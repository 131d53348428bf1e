package org.moultwright.domain;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
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

    /** Reconciles the entries of one brood with its checks. */
    public static Reconciliation of(List<LedgerEntry> entries, List<Check> checks) {
        List<LedgerEntry> all = new ArrayList<>(entries);
        trays(entries, checks).forEach(tray -> all.addAll(moreThanPutIn(tray, all, checks)));
        trays(entries, checks).forEach(tray -> all.addAll(overdrawn(tray, all)));
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

    private static List<LedgerEntry> moreThanPutIn(String tray, List<LedgerEntry> entries, List<Check> checks) {
        List<Check> counts =
                wholeCounts(checks).filter(check -> check.tray().equals(tray)).toList();
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
                added.add(found(tray, check.at(), lowestCounted(check), excess[i] - addedSoFar));
                addedSoFar = excess[i];
            }
        }
        return added;
    }

    private static List<LedgerEntry> overdrawn(String tray, List<LedgerEntry> entries) {
        Account account = Account.tray(tray);
        TreeMap<Instant, Integer> changes = new TreeMap<>();
        Map<Instant, Stage> taken = new HashMap<>();
        entries.forEach(entry -> {
            int change = entry.effectOn(account);
            if (change != 0) {
                changes.merge(entry.at(), change, Integer::sum);
                taken.merge(entry.at(), entry.stage(), (before, now) -> before);
            }
        });
        List<LedgerEntry> added = new ArrayList<>();
        int held = 0;
        for (Map.Entry<Instant, Integer> change : changes.entrySet()) {
            held += change.getValue();
            if (held < 0) {
                Stage stage = taken.getOrDefault(change.getKey(), Stage.EGG);
                added.add(found(tray, change.getKey(), stage, -held));
                held = 0;
            }
        }
        return added;
    }

    private static LedgerEntry found(String tray, Instant at, Stage stage, int count) {
        String name = String.join("|", "more than put in", tray, at.toString(), stage.key(), String.valueOf(count));
        UUID id = UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
        return LedgerEntry.of(id, at, Account.SAC, Account.tray(tray), stage, count, Cause.EARLIER_MISCOUNT);
    }

    private static Stage lowestCounted(Check check) {
        return check.looks().keySet().stream()
                .filter(stage -> check.counted(stage).orElse(0) > 0)
                .findFirst()
                .orElse(Stage.EGG);
    }

    private static int balance(String tray, List<LedgerEntry> entries, Instant at) {
        Account account = Account.tray(tray);
        return entries.stream()
                .filter(entry -> !entry.at().isAfter(at))
                .mapToInt(entry -> entry.effectOn(account))
                .sum();
    }

    private static List<String> trays(List<LedgerEntry> entries, List<Check> checks) {
        List<String> trays = new ArrayList<>();
        entries.forEach(entry -> {
            trays.add(entry.from().isTray() ? entry.from().code() : "");
            trays.add(entry.to().isTray() ? entry.to().code() : "");
        });
        checks.forEach(check -> trays.add(check.tray()));
        return trays.stream().filter(tray -> !tray.isEmpty()).distinct().toList();
    }

    private static Stream<Check> wholeCounts(List<Check> checks) {
        return checks.stream().filter(check -> check.total().isPresent()).sorted(Comparator.comparing(Check::at));
    }
}
