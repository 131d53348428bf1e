package org.moultwright.domain;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;

/**
 * All animals of one brood by double entry: every entry takes from one account what it gives to another.
 *
 * <p>Immutable. Promises: no account but {@link Account#SAC} is below zero at any instant; the accounts
 * always add up to zero, so that the sac's debt is the number of animals opened; nothing is edited, a
 * correction is a further entry; the balances are exactly what replaying the entries gives.
 */
public final class Ledger {
    public static final Ledger EMPTY = new Ledger(List.of());

    private static final Comparator<LedgerEntry> BY_TIME = Comparator.comparing(LedgerEntry::at);

    private final List<LedgerEntry> entries;
    private final Map<Account, Integer> balances;

    private Ledger(List<LedgerEntry> entries) {
        this.entries = entries;
        this.balances = replay(entries);
    }

    /**
     * The ledger of these entries, put in order of time; those of one instant keep the order given.
     *
     * @throws IllegalArgumentException if an account would fall below zero, an id stands twice, or a
     *     correction does not exactly reverse an entry of this ledger, or reverses one a second time
     */
    public static Ledger of(List<LedgerEntry> entries) {
        requireSoundIdentities(entries);
        return new Ledger(entries.stream().sorted(BY_TIME).toList());
    }

    /** This ledger and these entries more, under the same conditions as {@link #of}. */
    public Ledger with(List<LedgerEntry> more) {
        List<LedgerEntry> all = new ArrayList<>(entries);
        all.addAll(more);
        return of(all);
    }

    /** This ledger as it stood right after an instant. */
    public Ledger at(Instant instant) {
        boolean isAll =
                entries.isEmpty() || !entries.get(entries.size() - 1).at().isAfter(instant);
        return isAll
                ? this
                : new Ledger(entries.stream()
                        .filter(entry -> !entry.at().isAfter(instant))
                        .toList());
    }

    /** All entries ever made, corrections among them, in order of time. */
    public List<LedgerEntry> entries() {
        return entries;
    }

    /** The entries that still stand: those neither reversed nor a reversal. */
    public List<LedgerEntry> standing() {
        Set<UUID> corrected = new HashSet<>();
        entries.forEach(entry -> entry.corrects().ifPresent(corrected::add));
        return entries.stream()
                .filter(entry -> entry.corrects().isEmpty() && !corrected.contains(entry.id()))
                .toList();
    }

    /** Animals in an account; the sac's is negative, for those taken out of it. */
    public int balance(Account account) {
        return balances.getOrDefault(account, 0);
    }

    /** Every account ever touched with its balance, in order of first use. */
    public Map<Account, Integer> balances() {
        return balances;
    }

    /** Animals taken out of the sac so far. */
    public int opened() {
        return -balance(Account.SAC);
    }

    /** Animals alive in trays. */
    public int aliveInTrays() {
        return sum(Account::isTray);
    }

    /** Animals dead, infertile or missing. */
    public int lost() {
        return sum(Account::isLoss);
    }

    public Optional<LedgerEntry> find(UUID id) {
        return entries.stream().filter(entry -> entry.id().equals(id)).findFirst();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Ledger ledger && entries.equals(ledger.entries);
    }

    @Override
    public int hashCode() {
        return entries.hashCode();
    }

    @Override
    public String toString() {
        return "Ledger" + balances;
    }

    private int sum(Predicate<Account> chosen) {
        return balances.entrySet().stream()
                .filter(entry -> chosen.test(entry.getKey()))
                .mapToInt(Map.Entry::getValue)
                .sum();
    }

    /** Entries of one instant are one event: an account may dip within it, but not after it. */
    private static Map<Account, Integer> replay(List<LedgerEntry> entries) {
        Map<Account, Integer> balances = new LinkedHashMap<>();
        for (int i = 0; i < entries.size(); i++) {
            LedgerEntry entry = entries.get(i);
            balances.merge(entry.from(), -entry.count(), Integer::sum);
            balances.merge(entry.to(), entry.count(), Integer::sum);
            boolean endsInstant =
                    i + 1 == entries.size() || !entries.get(i + 1).at().equals(entry.at());
            if (endsInstant) {
                requireNoneOverdrawn(balances, entry.at());
            }
        }
        return Collections.unmodifiableMap(balances);
    }

    private static void requireNoneOverdrawn(Map<Account, Integer> balances, Instant at) {
        balances.forEach((account, balance) -> {
            if (balance < 0 && !account.equals(Account.SAC)) {
                throw new IllegalArgumentException("'%s' would hold %d animals at %s but must hold at least 0"
                        .formatted(account.code(), balance, at));
            }
        });
    }

    private static void requireSoundIdentities(List<LedgerEntry> entries) {
        Map<UUID, LedgerEntry> byId = new HashMap<>();
        for (LedgerEntry entry : entries) {
            Require.that(byId.put(entry.id(), entry) == null, "entry " + entry.id() + " stands twice");
        }
        Set<UUID> corrected = new HashSet<>();
        for (LedgerEntry entry : entries) {
            entry.corrects().ifPresent(id -> {
                LedgerEntry original = byId.get(id);
                Require.that(
                        original != null && reverses(entry, original),
                        "entry " + entry.id() + " does not reverse entry " + id);
                Require.that(corrected.add(id), "entry " + id + " is reversed twice");
            });
        }
    }

    private static boolean reverses(LedgerEntry correction, LedgerEntry original) {
        return correction.from().equals(original.to())
                && correction.to().equals(original.from())
                && correction.stage() == original.stage()
                && correction.count() == original.count()
                && correction.at().equals(original.at());
    }
}
