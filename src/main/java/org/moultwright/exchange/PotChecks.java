package org.moultwright.exchange;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.moultwright.domain.Pot;
import org.moultwright.domain.PotEvent;
import org.moultwright.exchange.TableReader.Placed;
import org.moultwright.language.Texts;

/** What must hold between rows of pots: no code twice, and nothing happens to a pot that is not there. */
final class PotChecks {
    private final Problems problems;
    private final Set<String> codes = new HashSet<>();

    PotChecks(Problems problems) {
        this.problems = problems;
    }

    void codes(List<Placed<Pot>> pots) {
        pots.forEach(pot -> {
            if (!codes.add(pot.value().code())) {
                problems.add(
                        PotTables.POTS.file(),
                        pot.line(),
                        "pot",
                        pot.value().code(),
                        Texts.say("each pot's code once"));
            }
        });
    }

    /** To be asked after {@link #codes}. */
    void events(List<Placed<PotEvent>> events) {
        events.forEach(event -> {
            if (!codes.contains(event.value().pot())) {
                problems.add(
                        PotTables.EVENTS_FILE,
                        event.line(),
                        "pot",
                        event.value().pot(),
                        Texts.say("a pot of pots.csv"));
            }
        });
    }
}
