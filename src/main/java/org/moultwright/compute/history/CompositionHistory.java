package org.moultwright.compute.history;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Check;
import org.moultwright.domain.LedgerEntry;
import org.moultwright.domain.Stage;
import org.moultwright.domain.TrayContents;

/**
 * A brood's contents through time: one {@link BroodDay} for the first thing written of its animals and for the
 * last of every day on which anything was.
 */
public final class CompositionHistory {
    private CompositionHistory() {}

    /** The days of a brood in order, the keeper's days beginning at midnight of the brood's zone. */
    public static List<BroodDay> of(BroodRecord record) {
        Courses courses = Courses.of(record);
        return turningPoints(record).stream().map(courses::day).toList();
    }

    /** What a brood is known to hold at an instant. */
    public static BroodDay at(BroodRecord record, Instant instant) {
        return Courses.of(record).day(instant);
    }

    private static List<Instant> turningPoints(BroodRecord record) {
        ZoneId zone = record.brood().zone();
        TreeMap<LocalDate, Instant> lastOfDay = new TreeMap<>();
        Stream.concat(
                        record.ledger().standing().stream().map(LedgerEntry::at),
                        record.checks().stream().map(Check::at))
                .sorted()
                .forEach(instant -> lastOfDay.put(instant.atZone(zone).toLocalDate(), instant));
        List<Instant> points = new ArrayList<>(lastOfDay.values());
        record.ledger().standing().stream()
                .map(LedgerEntry::at)
                .findFirst()
                .filter(opening -> !points.contains(opening))
                .ifPresent(opening -> points.add(0, opening));
        return points;
    }

    /** What every tray of a brood holds, and what left them all, through time: a long record is gone through once. */
    private record Courses(List<NavigableMap<Instant, TrayContents>> trays, List<LedgerEntry> entries) {
        static Courses of(BroodRecord record) {
            List<LedgerEntry> standing = record.ledger().standing();
            return new Courses(
                    record.ledger().balances().keySet().stream()
                            .filter(Account::isTray)
                            .map(tray -> TrayContents.course(tray.code(), standing, record.checks()))
                            .toList(),
                    record.ledger().entries());
        }

        BroodDay day(Instant instant) {
            Map<Stage, Integer> living = new EnumMap<>(Stage.class);
            trays.forEach(tray -> TrayContents.at(instant, tray)
                    .byStage()
                    .forEach((stage, count) -> living.merge(stage, count, Integer::sum)));
            int potted = 0;
            int lost = 0;
            for (LedgerEntry entry : entries) {
                if (!entry.at().isAfter(instant)) {
                    potted += entry.effectOn(Account.POTTED) + entry.effectOn(Account.HANDED_OVER);
                    lost += (entry.to().isLoss() ? entry.count() : 0)
                            - (entry.from().isLoss() ? entry.count() : 0);
                }
            }
            return new BroodDay(instant, living, potted, lost);
        }
    }
}
