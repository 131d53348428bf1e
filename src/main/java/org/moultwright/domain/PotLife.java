package org.moultwright.domain;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.moultwright.domain.PotEvent.What;

/**
 * One pot and what became of its animal.
 *
 * @param events what happened to it, in order of time
 */
public record PotLife(Pot pot, List<PotEvent> events) {
    public PotLife {
        events = events.stream().sorted(Comparator.comparing(PotEvent::at)).toList();
    }

    /** The lives of all pots of a brood, in the order the pots were written down. */
    public static List<PotLife> of(BroodRecord record) {
        Map<String, List<PotEvent>> byPot = new HashMap<>();
        record.potEvents()
                .forEach(event -> byPot.computeIfAbsent(event.pot(), none -> new ArrayList<>())
                        .add(event));
        return record.pots().stream()
                .map(pot -> new PotLife(pot, byPot.getOrDefault(pot.code(), List.of())))
                .toList();
    }

    /** How the animal left the keeper's care; empty while it is there. */
    public Optional<PotEvent> end() {
        return events.stream().filter(event -> event.what().isLast()).findFirst();
    }

    public boolean isAlive() {
        return end().isEmpty();
    }

    /** When this last happened, if ever. */
    public Optional<Instant> last(What what) {
        return events.stream()
                .filter(event -> event.what() == what)
                .map(PotEvent::at)
                .reduce((earlier, later) -> later);
    }

    /** How many moults were written down since it was potted. */
    public int moults() {
        return (int)
                events.stream().filter(event -> event.what() == What.MOULTED).count();
    }
}
