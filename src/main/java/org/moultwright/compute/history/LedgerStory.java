package org.moultwright.compute.history;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.moultwright.domain.Account;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Cause;
import org.moultwright.domain.LedgerEntry;

/** What the ledger has to tell: the opening, losses, pottings, miscounts, each tray's added up by day. */
final class LedgerStory {
    private final BroodRecord record;

    private LedgerStory(BroodRecord record) {
        this.record = record;
    }

    static List<StoryEvent> of(BroodRecord record) {
        LedgerStory story = new LedgerStory(record);
        List<StoryEvent> events = new ArrayList<>(story.openings());
        story.sums(entry -> entry.to().isLoss() && !isOfPots(entry))
                .forEach((key, sum) ->
                        events.add(new StoryEvent.Lost(sum.at(), key.tray(), -sum.change(), key.cause())));
        story.sums(LedgerStory::isPotting)
                .forEach((key, sum) -> events.add(new StoryEvent.Potted(sum.at(), key.tray(), -sum.change())));
        story.sums(entry -> isMiscount(entry) && !entry.to().isLoss())
                .forEach((key, sum) -> events.add(new StoryEvent.Recounted(sum.at(), key.tray(), sum.change())));
        story.sums(LedgerStory::isOfPots)
                .forEach((key, sum) -> events.add(new StoryEvent.LeftPots(sum.at(), -sum.change(), key.cause())));
        return events;
    }

    private List<StoryEvent> openings() {
        Map<LocalDate, List<LedgerEntry>> byDay = new LinkedHashMap<>();
        record.ledger().standing().stream()
                .filter(entry -> entry.from().equals(Account.SAC) && entry.to().isTray() && !isMiscount(entry))
                .forEach(entry -> byDay.computeIfAbsent(day(entry.at()), day -> new ArrayList<>())
                        .add(entry));
        return byDay.values().stream().map(LedgerStory::opening).toList();
    }

    private static StoryEvent opening(List<LedgerEntry> entries) {
        return new StoryEvent.Opened(
                entries.get(0).at(),
                entries.stream().mapToInt(LedgerEntry::count).sum(),
                entries.stream().map(entry -> entry.to().code()).distinct().toList(),
                entries.stream().anyMatch(entry -> entry.cause().equals(Cause.ESTIMATED)));
    }

    /** What entries of one sort changed in each tray, added up by day and cause. */
    private Map<Key, Sum> sums(Predicate<LedgerEntry> sort) {
        Map<Key, Sum> sums = new LinkedHashMap<>();
        record.ledger().standing().stream().filter(sort).forEach(entry -> {
            boolean isOfSource =
                    entry.from().isTray() || isOfPots(entry) || !entry.to().isTray();
            Account place = isOfSource ? entry.from() : entry.to();
            Key key = new Key(day(entry.at()), place.code(), entry.cause());
            sums.merge(key, new Sum(entry.at(), entry.effectOn(place)), Sum::plus);
        });
        return sums;
    }

    private static boolean isPotting(LedgerEntry entry) {
        return !isOfPots(entry)
                && (entry.to().equals(Account.POTTED) || entry.to().equals(Account.HANDED_OVER));
    }

    private static boolean isOfPots(LedgerEntry entry) {
        return entry.from().equals(Account.POTTED);
    }

    private static boolean isMiscount(LedgerEntry entry) {
        return entry.cause().equals(Cause.EARLIER_MISCOUNT);
    }

    private LocalDate day(Instant at) {
        return at.atZone(record.brood().zone()).toLocalDate();
    }

    private record Key(LocalDate day, String tray, Cause cause) {}

    /** What was added to a tray, by the last entry of the day. */
    private record Sum(Instant at, int change) {
        Sum plus(Sum later) {
            return new Sum(later.at(), change + later.change());
        }
    }
}
