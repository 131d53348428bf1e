package org.moultwright.domain;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * The animals of one tray by stage, as last seen and less what was taken out since.
 *
 * <p>A whole count replaces all that was believed before; an entry adds or takes animals of its stage, and
 * where none of that stage are left, of the nearest stage that has some. Entries of a count's own instant
 * come before it: the keeper counts what is left.
 *
 * @param byStage animals by stage; stages without any are left out
 */
public record TrayContents(Map<Stage, Integer> byStage) {
    public static final TrayContents NONE = new TrayContents(Map.of());

    public TrayContents {
        EnumMap<Stage, Integer> ordered = new EnumMap<>(Stage.class);
        byStage.forEach((stage, count) -> {
            Require.atLeast(stage.key(), count, 0);
            if (count > 0) {
                ordered.put(stage, count);
            }
        });
        byStage = Collections.unmodifiableMap(ordered);
    }

    /** What a tray holds right after an instant. */
    public static TrayContents at(Instant instant, String tray, Ledger ledger, List<Check> checks) {
        return at(instant, course(tray, ledger.standing(), checks));
    }

    /** What a tray holds right after an instant of its course. */
    public static TrayContents at(Instant instant, NavigableMap<Instant, TrayContents> course) {
        Map.Entry<Instant, TrayContents> last = course.floorEntry(instant);
        return last == null ? NONE : last.getValue();
    }

    /** What a tray holds right after every instant at which that changed. */
    public static NavigableMap<Instant, TrayContents> course(
            String tray, List<LedgerEntry> standing, List<Check> checks) {
        List<Event> events = new ArrayList<>();
        Account account = Account.tray(tray);
        for (LedgerEntry entry : standing) {
            int change = entry.effectOn(account);
            if (change != 0) {
                events.add(new Event(entry.at(), contents -> contents.plus(entry.stage(), change)));
            }
        }
        for (Check check : checks) {
            if (check.tray().equals(tray) && check.total().isPresent()) {
                events.add(new Event(check.at(), contents -> of(check)));
            }
        }
        events.sort(Comparator.comparing(Event::at));
        NavigableMap<Instant, TrayContents> course = new TreeMap<>();
        TrayContents contents = NONE;
        for (Event event : events) {
            contents = event.change().apply(contents);
            course.put(event.at(), contents);
        }
        return course;
    }

    /** What a whole count found. */
    private static TrayContents of(Check check) {
        EnumMap<Stage, Integer> counts = new EnumMap<>(Stage.class);
        check.looks()
                .keySet()
                .forEach(stage -> counts.put(stage, check.counted(stage).orElse(0)));
        return new TrayContents(counts);
    }

    public int count(Stage stage) {
        return byStage.getOrDefault(stage, 0);
    }

    public int total() {
        return byStage.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** These contents with animals of a stage added, or taken where {@code change} is negative. */
    public TrayContents plus(Stage stage, int change) {
        EnumMap<Stage, Integer> counts = new EnumMap<>(Stage.class);
        counts.putAll(byStage);
        if (change >= 0) {
            counts.merge(stage, change, Integer::sum);
            return new TrayContents(counts);
        }
        int toTake = -change;
        for (Stage nearest : nearestTo(stage)) {
            int taken = Math.min(toTake, counts.getOrDefault(nearest, 0));
            counts.merge(nearest, -taken, Integer::sum);
            toTake -= taken;
        }
        return new TrayContents(counts);
    }

    private static List<Stage> nearestTo(Stage stage) {
        int position = List.of(Stage.values()).indexOf(stage);
        return List.of(Stage.values()).stream()
                .sorted(Comparator.comparingInt(
                        other -> Math.abs(List.of(Stage.values()).indexOf(other) - position)))
                .toList();
    }

    private record Event(Instant at, UnaryOperator<TrayContents> change) {}
}
