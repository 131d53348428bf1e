package org.moultwright.workflow;

import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.moultwright.compute.forecast.PastBroods;
import org.moultwright.domain.Account;
import org.moultwright.domain.Brood;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Check;
import org.moultwright.domain.ReadingSeries;

/**
 * The completed broods of a room that others of their species learn from. What they taught is kept while the
 * same ones are there, and a completed brood's readings are cut to its time once, not at every look into the room.
 * Not safe to share.
 */
final class Teachers {
    /** So few of a brood may be left in trays when it counts as completed. */
    private static final double LEFT_SHARE = 0.05;

    private static final int FEWEST_ANIMALS = 5;

    private final Map<String, Teacher> cut = new HashMap<>();
    private final Map<List<Teacher>, PastBroods> known = new HashMap<>();
    private List<Teacher> teaching = List.of();

    /** Reads a room anew: those in it that are completed and not left out teach from now on. */
    void read(List<BroodRecord> room, Set<String> leftOut) {
        teaching = room.stream()
                .filter(brood -> !leftOut.contains(brood.brood().code()) && isCompleted(brood))
                .map(brood -> cut.compute(
                        brood.brood().code(),
                        (code, before) -> before != null && before.isStill(brood) ? before : Teacher.of(brood)))
                .toList();
        cut.values().retainAll(teaching);
        known.keySet().removeIf(others -> !teaching.containsAll(others));
    }

    /** What may teach a brood; never the brood itself. */
    PastBroods of(Brood brood) {
        List<Teacher> others = teaching.stream()
                .filter(teacher -> isOtherOfSpecies(teacher.record().brood(), brood))
                .toList();
        return others.isEmpty()
                ? PastBroods.NONE
                : known.computeIfAbsent(
                        others,
                        unheard -> PastBroods.of(
                                others.stream().map(Teacher::record).toList()));
    }

    /** Whether a brood may teach another unless it is left out: a completed one of its species, never itself. */
    static boolean mayTeach(BroodRecord other, Brood brood) {
        return isOtherOfSpecies(other.brood(), brood) && isCompleted(other);
    }

    static boolean isCompleted(BroodRecord record) {
        int left = record.ledger().balances().entrySet().stream()
                .filter(balance -> balance.getKey().kind() == Account.Kind.TRAY)
                .mapToInt(Map.Entry::getValue)
                .sum();
        int opened = record.ledger().opened();
        return opened >= FEWEST_ANIMALS && left <= LEFT_SHARE * opened;
    }

    private static boolean isOtherOfSpecies(Brood other, Brood brood) {
        return !other.code().equals(brood.code()) && other.taxon().equals(brood.taxon());
    }

    /**
     * A completed brood, and the same without what was measured after its last look, such as by a probe that stays,
     * which teaches nothing. It is equal to itself alone: the readings of a year are not compared to find it.
     */
    private static final class Teacher {
        private final BroodRecord written;
        private final Optional<Instant> last;
        private final BroodRecord record;

        private Teacher(BroodRecord written, Optional<Instant> last, BroodRecord record) {
            this.written = written;
            this.last = last;
            this.record = record;
        }

        static Teacher of(BroodRecord whole) {
            Optional<Instant> last = whole.checks().stream().map(Check::at).max(Comparator.naturalOrder());
            return new Teacher(
                    whole.withReadings(Map.of()), last, last.map(whole::until).orElse(whole));
        }

        BroodRecord record() {
            return record;
        }

        /** Whether a brood, read anew, would be cut to the same. */
        boolean isStill(BroodRecord whole) {
            return written.equals(whole.withReadings(Map.of()))
                    && record.readings().keySet().equals(whole.readings().keySet())
                    && record.readings().entrySet().stream()
                            .allMatch(probe -> isCutOf(
                                    probe.getValue(),
                                    whole.readings().getOrDefault(probe.getKey(), ReadingSeries.EMPTY)));
        }

        private boolean isCutOf(ReadingSeries series, ReadingSeries whole) {
            int size = last.map(at -> whole.indexAtOrAfter(at.plusMillis(1))).orElse(whole.size());
            return size == series.size() && whole.continues(series);
        }
    }
}
