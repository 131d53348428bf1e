package org.moultwright.compute.history;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Check;
import org.moultwright.domain.Ledger;
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
        List<Instant> instants = turningPoints(record);
        List<String> trays = trays(record);
        return instants.stream().map(instant -> day(record, trays, instant)).toList();
    }

    /** What a brood is known to hold at an instant. */
    public static BroodDay at(BroodRecord record, Instant instant) {
        return day(record, trays(record), instant);
    }

    private static BroodDay day(BroodRecord record, List<String> trays, Instant instant) {
        Map<Stage, Integer> living = new EnumMap<>(Stage.class);
        for (String tray : trays) {
            TrayContents.at(instant, tray, record.ledger(), record.checks())
                    .byStage()
                    .forEach((stage, count) -> living.merge(stage, count, Integer::sum));
        }
        Ledger ledger = record.ledger().at(instant);
        int potted = ledger.balance(Account.POTTED) + ledger.balance(Account.HANDED_OVER);
        return new BroodDay(instant, living, potted, ledger.lost());
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

    private static List<String> trays(BroodRecord record) {
        return record.ledger().balances().keySet().stream()
                .filter(Account::isTray)
                .map(Account::code)
                .toList();
    }
}
