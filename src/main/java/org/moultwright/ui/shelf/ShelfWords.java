package org.moultwright.ui.shelf;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.moultwright.domain.ContainerKind;
import org.moultwright.domain.HandReading;
import org.moultwright.domain.Shelf;
import org.moultwright.domain.Stage;
import org.moultwright.domain.Stay;
import org.moultwright.language.Degrees;
import org.moultwright.language.Numbers;
import org.moultwright.language.Texts;
import org.moultwright.text.DayWords;
import org.moultwright.text.Listing;
import org.moultwright.text.Vocabulary;
import org.moultwright.workflow.Standing;
import org.moultwright.workflow.Standing.Air;
import org.moultwright.workflow.Standing.Source;

/** The sentences of the shelf. */
final class ShelfWords {
    static final String EMPTY =
            Texts.say("Nothing stands on the shelf yet. Add the room or an incubator first, then boxes in it. "
                    + "Trays come by themselves once a sac is opened or a brood folder is taken in.");
    static final String NOTHING_THEN = Texts.say("Nothing stood on the shelf on that day. Choose a later one.");
    private static final int MOVES_SHOWN = 6;
    private static final int CODES_SHOWN = 4;

    private ShelfWords() {}

    /** "27.0 °C", or "27.0 °C set" where nothing measures. */
    static String temperature(Air air) {
        String celsius = Degrees.words(air.celsius(), 1);
        return air.reading().isPresent() ? celsius : Texts.say("{0} set", celsius);
    }

    /** "40 s ago, P-1", "3 h ago, by hand", "set-point of INC-1". */
    static String source(Standing standing, Air air, Instant at) {
        return air.reading()
                .map(source -> {
                    String age = DayWords.age(Duration.between(source.takenAt(), at));
                    return air.container().equals(standing.code())
                            ? Texts.say("{0} ago, {1}", age, probe(source))
                            : Texts.say("{0} ago, {1} in {2}", age, probe(source), air.container());
                })
                .orElseGet(() -> Texts.say("set-point of {0}, no probe", air.container()));
    }

    /** "74 % RH", or nothing. */
    static String humidity(Air air) {
        return Double.isNaN(air.percent()) ? "" : Numbers.fixed(air.percent(), 0) + " % RH";
    }

    /** "31 dark nymphs, 22 nymphs, 3 slings". */
    static String stages(Map<Stage, Integer> byStage, Vocabulary names) {
        return byStage.entrySet().stream()
                .filter(stage -> stage.getValue() > 0)
                .sorted(Map.Entry.comparingByKey())
                .map(stage -> stage.getValue() + " "
                        + (stage.getValue() == 1 ? names.singular(stage.getKey()) : names.plural(stage.getKey())))
                .collect(Collectors.joining(", "));
    }

    static String broods(Standing standing) {
        return standing.occupants().stream().map(Standing.Occupants::brood).collect(Collectors.joining(", "));
    }

    /** "56 animals in 2 trays, 1 sac not opened yet", "no animals": only what is lived in is counted, by what it is. */
    static String within(Standing standing) {
        List<ContainerKind> homes = standing.homesWithin();
        int sacs = standing.sacsWithin();
        List<String> parts = new ArrayList<>();
        if (!homes.isEmpty()) {
            parts.add(Texts.say("{0} in {1}", animals(standing.aliveWithin()), homes(homes.size(), Set.copyOf(homes))));
        }
        if (sacs > 0) {
            parts.add(Texts.count(sacs, "1 sac not opened yet", "{0} sacs not opened yet", sacs));
        }
        return parts.isEmpty() ? Texts.say("no animals") : String.join(", ", parts);
    }

    /** What is in a container itself where no animals are counted. */
    static String unlived(Standing standing) {
        return standing.holdsSac() ? Texts.say("a sac, not opened yet") : Texts.say("no animals");
    }

    private static String homes(int count, Set<ContainerKind> kinds) {
        if (kinds.equals(Set.of(ContainerKind.TRAY))) {
            return Texts.count(count, "1 tray", "{0} trays", count);
        }
        return kinds.equals(Set.of(ContainerKind.HAMMOCK))
                ? Texts.count(count, "1 hammock", "{0} hammocks", count)
                : Texts.count(count, "1 container", "{0} containers", count);
    }

    static String animals(int count) {
        return Texts.count(count, "1 animal", "{0} animals", count);
    }

    /** The card in words, for who cannot see it. */
    static String card(Standing standing, Vocabulary names) {
        List<String> parts =
                new ArrayList<>(List.of(standing.code(), standing.kind().word()));
        standing.inside().ifPresent(around -> parts.add(Texts.say("in {0}", around)));
        standing.occupants()
                .forEach(one ->
                        parts.add(one.brood() + ", " + animals(one.alive()) + ": " + stages(one.byStage(), names)));
        if (!standing.contents().isEmpty()) {
            parts.add(within(standing));
        } else if (standing.holdsSac()) {
            parts.add(unlived(standing));
        }
        standing.air().ifPresent(air -> parts.add(temperature(air)));
        return String.join(", ", parts);
    }

    /** "in box 1 since 25 March". */
    static String place(Standing standing, DayWords days) {
        String where =
                standing.inside().map(around -> Texts.say("in {0}", around)).orElse(Texts.say("stands in nothing"));
        return standing.since()
                .map(since -> Texts.say("{0} since {1}", where, days.day(since)))
                .orElse(Texts.say("nobody wrote down where it stands"));
    }

    /** What was moved last up to an instant: the day, and "A1, A2 into box 1". */
    static List<Moved> moved(Shelf shelf, Instant at, DayWords days) {
        Map<String, List<String>> byDay = new LinkedHashMap<>();
        Map<String, String> dayOf = new LinkedHashMap<>();
        shelf.stays().stream()
                .filter(stay -> !stay.span().from().isAfter(at))
                .sorted(Comparator.comparing((Stay stay) -> stay.span().from()).reversed())
                .forEach(stay -> {
                    String day = days.shortDay(stay.span().from());
                    String key = day + "|" + stay.inside().orElse("");
                    dayOf.put(key, day);
                    byDay.computeIfAbsent(key, none -> new ArrayList<>()).add(stay.container());
                });
        return byDay.entrySet().stream()
                .limit(MOVES_SHOWN)
                .map(entry -> new Moved(
                        Optional.ofNullable(dayOf.get(entry.getKey())).orElse(""),
                        into(
                                Listing.few(entry.getValue().stream().distinct().toList(), CODES_SHOWN),
                                entry.getKey().substring(entry.getKey().indexOf('|') + 1))))
                .toList();
    }

    private static String into(String codes, String around) {
        return around.isEmpty() ? Texts.say("{0} put up", codes) : Texts.say("{0} into {1}", codes, around);
    }

    private static String probe(Source source) {
        return HandReading.isByHand(source.probe()) ? Texts.say("by hand") : source.probe();
    }

    /** Something that was moved, and the day. */
    record Moved(String day, String what) {}
}
