package org.moultwright.workflow;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.moultwright.compute.forecast.PastBroods;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Check;

/**
 * The completed broods of a room that others of their species learn from. What they taught is kept while the
 * same ones are there. Not safe to share.
 */
final class Teachers {
    /** So few of a brood may be left in trays when it counts as completed. */
    private static final double LEFT_SHARE = 0.05;

    private static final int FEWEST_ANIMALS = 5;

    private final Map<List<BroodRecord>, PastBroods> known = new HashMap<>();

    /** Those among all broods of a room that may teach one of them; never the brood itself. */
    PastBroods of(BroodRecord brood, List<BroodRecord> room) {
        List<BroodRecord> teaching = room.stream()
                .filter(other -> mayTeach(other, brood.brood()))
                .map(Teachers::untilItsLastLook)
                .toList();
        return teaching.isEmpty() ? PastBroods.NONE : known.computeIfAbsent(teaching, PastBroods::of);
    }

    /** Keeps only what still stands, so that rooms of other days do not pile up. */
    void forgetAllBut(List<PastBroods> standing) {
        known.values().removeIf(past -> !standing.contains(past));
    }

    /** What is measured later, such as by a probe that stays, teaches nothing of it. */
    private static BroodRecord untilItsLastLook(BroodRecord record) {
        return record.checks().stream()
                .map(Check::at)
                .max(Comparator.naturalOrder())
                .map(record::until)
                .orElse(record);
    }

    /** Whether a brood may teach another: a completed one of its species, never itself. */
    static boolean mayTeach(BroodRecord other, Brood brood) {
        return !other.brood().code().equals(brood.code())
                && other.brood().taxon().equals(brood.taxon())
                && isCompleted(other);
    }

    static boolean isCompleted(BroodRecord record) {
        int left = record.ledger().balances().entrySet().stream()
                .filter(balance -> balance.getKey().kind() == Account.Kind.TRAY)
                .mapToInt(Map.Entry::getValue)
                .sum();
        int opened = record.ledger().opened();
        return opened >= FEWEST_ANIMALS && left <= LEFT_SHARE * opened;
    }
}
