package org.moultwright.compute.history;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.moultwright.domain.BroodRecord;
import org.moultwright.domain.Check;
import org.moultwright.domain.Look;
import org.moultwright.domain.Stage;

/** The days on which a stage was first seen in a tray, trays of one day told together. */
final class FirstSights {
    private FirstSights() {}

    static List<StoryEvent> of(BroodRecord record) {
        Map<String, Set<Stage>> known = new HashMap<>();
        Map<Key, Sights> first = new LinkedHashMap<>();
        for (Check check : record.checks()) {
            Set<Stage> knownHere = known.computeIfAbsent(check.tray(), tray -> EnumSet.noneOf(Stage.class));
            boolean isFirstLook = knownHere.isEmpty();
            check.looks().forEach((stage, look) -> {
                if (shows(look) && knownHere.add(stage) && !isFirstLook) {
                    LocalDate day = check.at().atZone(record.brood().zone()).toLocalDate();
                    first.computeIfAbsent(new Key(day, stage), key -> new Sights(check.at()))
                            .add(check.tray(), look);
                }
            });
        }
        List<StoryEvent> events = new ArrayList<>();
        first.forEach((key, sights) ->
                events.add(new StoryEvent.FirstSeen(sights.at, key.stage(), sights.trays, sights.counts)));
        return events;
    }

    private static boolean shows(Look look) {
        if (look instanceof Look.Full full) {
            return full.count() > 0;
        }
        return look instanceof Look.Seen || (look instanceof Look.Sample sample && sample.count() > 0);
    }

    private record Key(LocalDate day, Stage stage) {}

    private static final class Sights {
        private final Instant at;
        private final List<String> trays = new ArrayList<>();
        private final Map<String, Integer> counts = new HashMap<>();

        Sights(Instant at) {
            this.at = at;
        }

        void add(String tray, Look look) {
            trays.add(tray);
            if (look instanceof Look.Full full) {
                counts.put(tray, full.count());
            }
        }
    }
}
